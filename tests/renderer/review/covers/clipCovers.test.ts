import { expect, it } from 'vitest';
import type { ClipCover } from '../../../../engine/covers/cover.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import { coverName, coverSpan } from '../../../../renderer/review/covers/clipCovers.ts';

/** Four seconds of ten frames each. */
const table: FrameTable = {
  timeBase: { numerator: 1, denominator: 10 },
  ticks: Array.from({ length: 40 }, (_, frame) => frame),
  endTicks: 40,
};
const box = { leftPx: 1, topPx: 1, widthPx: 9, heightPx: 9 };
const placed = (firstFrame: number, lastFrame: number, places: number): ClipCover => ({
  ...{ kind: 'box', firstFrame, lastFrame, look: 'mosaic' },
  places: Array.from({ length: places }, (_, frame) => ({ frame, box })),
});

it('names a cover by its number, what it follows and its look', () => {
  expect(coverName(placed(0, 39, 1), 1)).toBe('Cover 2: mosaic');
  expect(coverName({ kind: 'head', firstFrame: 0, lastFrame: 39, look: 'filled' }, 0)).toBe('Cover 1: head, dark box');
});

it.each<[ClipCover, string]>([
  [placed(0, 39, 1), '1 position, whole clip'],
  [placed(12, 39, 3), '3 positions, from 0:01.200'],
  [placed(0, 20, 2), '2 positions, until 0:02.000'],
  [placed(5, 20, 2), '2 positions, from 0:00.500 until 0:02.000'],
  [{ kind: 'head', firstFrame: 0, lastFrame: 39, look: 'filled' }, 'follows the joints, whole clip'],
])('says how many places it has and when it covers', (cover, words) => {
  expect(coverSpan(cover, {}, table)).toBe(words);
});

/** Frames 10 to 29 of the forty: the clip's clock is at 0 one second into the footage. */
const section = { from: { frame: 10, ticks: 10 }, to: { frame: 29, ticks: 29 } };

it.each<[ClipCover, string]>([
  [placed(0, 39, 1), '1 position, whole clip'],
  [placed(10, 29, 1), '1 position, whole clip'],
  [placed(12, 39, 1), '1 position, from 0:00.200'],
  [placed(0, 25, 1), '1 position, until 0:01.500'],
])('tells the times of a trimmed clip from where it begins', (cover, words) => {
  expect(coverSpan(cover, { section }, table)).toBe(words);
});
