import { expect, it } from 'vitest';
import { showsAt, usualLastFrame } from '../../../../engine/review/drawings/drawing.ts';

/** Two seconds at ten frames a second, then one at a hundred. */
const table = {
  timeBase: { numerator: 1, denominator: 1000 },
  ticks: [...Array.from({ length: 20 }, (_, i) => i * 100), ...Array.from({ length: 100 }, (_, i) => 2000 + i * 10)],
  endTicks: 3000,
};
const at = (frame: number) => ({ frame, ticks: table.ticks[frame] ?? 0 });

it.each([
  ['in a rep: its end', 5, 15],
  ['on its last frame: that frame', 15, 15],
  ['after a rep: one second, by the clock and not by frames', 16, 80],
  ['in a rep without an end: one second', 18, 100],
  ['near the end: the last frame', 100, 119],
])('drawn %s', (_where, frame, last) => {
  const reps = [{ start: at(4), end: at(15) }, { start: at(17) }];
  expect(usualLastFrame(frame, reps, table)).toBe(last);
});

it('shows from its first to its last frame, a moment in seconds meaning the frame that shows then', () => {
  const drawing = { from: at(3), to: { seconds: 1.05 } };
  expect([2, 3, 10, 11].map((frame) => showsAt(drawing, frame, table))).toEqual([false, true, true, false]);
});
