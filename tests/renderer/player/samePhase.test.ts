import { describe, expect, it } from 'vitest';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { ghostFrame, samePhase } from '../../../renderer/player/repFrames.ts';

/** A hundred frames, a tenth of a second each. */
const table: FrameTable = {
  timeBase: { numerator: 1, denominator: 10 },
  ticks: Array.from({ length: 100 }, (_, i) => i),
  endTicks: 100,
};
const at = (frame: number) => ({ frame, ticks: frame });
/** Rep 1: 20 frames down, 10 up. Rep 2: 10 down, 20 up. */
const reps = [
  { index: 1, start: at(0), stretchedEnd: at(20), end: at(30) },
  { index: 2, start: at(40), stretchedEnd: at(50), end: at(70) },
];
const from = (index: number) => ({ reps, index, table });

describe('the same phase of another rep', () => {
  it.each([
    [40, 0, 'the start'],
    [45, 10, 'half way down'],
    [50, 20, 'the stretched end'],
    [60, 25, 'half way up'],
    [70, 30, 'the end'],
  ])('frame %d is frame %d: %s', (frame, expected) => {
    expect(samePhase(frame, from(2), from(1))).toBe(expected);
  });

  it('goes by the whole rep where a stretched end is not marked: 45 is a sixth of rep 2, frame 5 of rep 1', () => {
    const bare = reps.map(({ stretchedEnd: _, ...rep }) => rep);
    expect(samePhase(45, { reps: bare, index: 2, table }, from(1))).toBe(5);
  });

  it('is not known of a rep that is not there', () => {
    expect(samePhase(45, from(2), from(9))).toBeNull();
  });
});

describe('the ghost', () => {
  it('is the rep before; the first rep and the pauses have none', () => {
    expect(ghostFrame(reps, 60, table)).toBe(25);
    expect(ghostFrame(reps, 10, table)).toBeNull();
    expect(ghostFrame(reps, 35, table)).toBeNull();
  });
});
