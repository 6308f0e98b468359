import { expect, it } from 'vitest';
import type { Rep } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { repAtFrame, repFrames } from '../../../renderer/player/repFrames.ts';

/** A hundred frames at ten a second. */
const table: FrameTable = {
  timeBase: { numerator: 1, denominator: 10 },
  ticks: Array.from({ length: 100 }, (_, frame) => frame),
  endTicks: 100,
};
const at = (frame: number) => ({ frame, ticks: frame });
const reps: readonly Rep[] = [
  { index: 1, start: at(10), stretchedEnd: at(15), end: at(20) },
  { index: 2, start: at(20), end: at(30) },
  { index: 3, start: at(40) },
];

it('finds the rep that holds a frame, and none before, between and after', () => {
  expect([9, 10, 15, 25, 35].map((frame) => repAtFrame(reps, frame, table))).toEqual([null, 1, 1, 2, null]);
});

it('gives a shared edge to the rep that starts there', () => {
  expect(repAtFrame(reps, 20, table)).toBe(2);
});

it('lets a rep without an end run to the end of the clip, or to the next start', () => {
  expect(repFrames(reps, 3, table)).toEqual({ first: 40, last: 99 });
  const open: readonly Rep[] = [
    { index: 1, start: at(10) },
    { index: 2, start: at(40) },
  ];
  expect(repFrames(open, 1, table)).toEqual({ first: 10, last: 39 });
});

it('reads moments in seconds by the table', () => {
  expect(repFrames([{ index: 1, start: { seconds: 1 }, end: { seconds: 2 } }], 1, table)).toEqual({
    first: 10,
    last: 20,
  });
});
