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

  describe('where times are rounded', () => {
    /** Thirty frames a second: 0, 33, 67, 100, 133, 167, 200 ms in a container that rounds to whole ones. */
    const rounded: FrameTable = {
      timeBase: { numerator: 1, denominator: 1000 },
      ticks: Array.from({ length: 7 }, (_, i) => Math.round((i * 1000) / 30)),
      endTicks: 233,
    };
    /** The same in thirtieths, which are rounded to microseconds alone: frame 2 begins at 66,667, frame 4 at 133,333. */
    const thirtieths: FrameTable = {
      timeBase: { numerator: 1, denominator: 30 },
      ticks: [0, 1, 2, 3, 4, 5, 6],
      endTicks: 7,
    };

    it.each([
      // Of frames 2 to 5, frame 4 is 66 of 100 ms in: 66 ms into frames 0 to 3, of which frame 2 begins at 67.
      ['to milliseconds', rounded],
      // 133,333 - 66,667 = 66,666 of 100,000 us in, and frame 2 begins at 66,667.
      ['to microseconds', thirtieths],
    ])('%s, no frame of an equal rep is one early', (_, films) => {
      const frame = (index: number) => ({ frame: index, ticks: films.ticks[index] ?? 0 });
      const equal = [
        { index: 1, start: frame(0), end: frame(3) },
        { index: 2, start: frame(2), end: frame(5) },
      ];
      const of = (index: number) => ({ reps: equal, index, table: films });
      expect([2, 3, 4, 5].map((each) => samePhase(each, of(2), of(1)))).toEqual([0, 1, 2, 3]);
      expect([0, 1, 2, 3].map((each) => samePhase(each, of(1), of(2)))).toEqual([2, 3, 4, 5]);
    });
  });

  it('is the nearest frame: a third of the way through 4 frames is 1.33, two thirds 2.67', () => {
    const uneven = [
      { index: 1, start: at(0), end: at(3) },
      { index: 2, start: at(10), end: at(14) },
    ];
    const of = (index: number) => ({ reps: uneven, index, table });
    expect([0, 1, 2, 3].map((frame) => samePhase(frame, of(1), of(2)))).toEqual([10, 11, 13, 14]);
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
