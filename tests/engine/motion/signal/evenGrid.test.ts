import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knownRuns, onEvenGrid, overRuns } from '../../../../engine/motion/signal/evenGrid.ts';

const number = fc.double({ min: -100, max: 100, noNaN: true });
/** Rising times with steps as a phone writes them. */
const risingTimes = fc
  .array(fc.double({ min: 0.005, max: 0.1, noNaN: true }), { minLength: 2, maxLength: 100 })
  .map((steps) => {
    let timeS = 0;
    const later = steps.map((step) => {
      timeS += step;
      return timeS;
    });
    return [0, ...later];
  });

describe('an even grid', () => {
  it('reproduces a straight line through uneven times', () => {
    fc.assert(
      fc.property(risingTimes, number, number, (timesS, start, slope) => {
        const line = (timeS: number) => start + slope * timeS;
        const grid = onEvenGrid(timesS, timesS.map(line), { stepS: 1 / 60, longestGapS: 0.2 });
        const endS = grid.startS + (grid.values.length - 1) * grid.stepS;
        expect(grid.startS).toBe(0);
        expect(endS).toBeLessThanOrEqual((timesS.at(-1) ?? 0) + 1e-6);
        expect(endS).toBeGreaterThan((timesS.at(-1) ?? 0) - grid.stepS - 1e-6);
        for (const [i, value] of grid.values.entries()) expect(value).toBeCloseTo(line(i * grid.stepS), 6);
      }),
    );
  });

  it('keeps long gaps null and bridges short ones, with nothing made up at the ends', () => {
    fc.assert(
      fc.property(
        fc.array(fc.option(number, { nil: null, freq: 2 }), { minLength: 1, maxLength: 120 }),
        fc.integer({ min: 1, max: 6 }),
        (values, longestGap) => {
          const timesS = values.map((_, i) => i);
          const grid = onEvenGrid(timesS, values, { stepS: 1, longestGapS: longestGap });
          expect(grid.values).toHaveLength(values.length);
          for (const [i, value] of grid.values.entries()) {
            const before = values.findLastIndex((seen, at) => seen !== null && at <= i);
            const after = values.findIndex((seen, at) => seen !== null && at >= i);
            const known = before === i || (before >= 0 && after >= 0 && after - before <= longestGap);
            expect(value !== null).toBe(known);
            if (before === i) expect(value).toBeCloseTo(values[i] ?? Number.NaN, 9);
          }
        },
      ),
    );
  });

  it('follows a curve between its samples', () => {
    const timesS = Array.from({ length: 61 }, (_, i) => (i + (i % 2 === 0 ? 0 : 0.3)) / 30);
    const wave = (timeS: number) => Math.sin(2 * Math.PI * timeS);
    const grid = onEvenGrid(timesS, timesS.map(wave), { stepS: 1 / 120, longestGapS: 0.2 });
    for (const [i, value] of grid.values.entries()) expect(Math.abs((value ?? 9) - wave(i / 120))).toBeLessThan(1e-3);
  });

  it('is empty for no samples, and null all over when nothing was seen', () => {
    expect(onEvenGrid([], [], { stepS: 0.1, longestGapS: 1 }).values).toEqual([]);
    expect(onEvenGrid([0, 0.1, 0.2], [null, null, null], { stepS: 0.1, longestGapS: 1 }).values).toEqual([
      null,
      null,
      null,
    ]);
    expect(onEvenGrid([2], [7], { stepS: 0.1, longestGapS: 1 })).toEqual({ startS: 2, stepS: 0.1, values: [7] });
  });

  it('refuses a step that is none, and times that do not rise', () => {
    expect(() => onEvenGrid([0, 1], [0, 1], { stepS: 0, longestGapS: 1 })).toThrow(RangeError);
    expect(() => onEvenGrid([0, 1, 1], [0, 1, 2], { stepS: 1, longestGapS: 1 })).toThrow(RangeError);
  });
});

describe('known stretches', () => {
  const values = [null, 1, 2, null, null, 3, null];

  it('are found with their places, and worked on one by one', () => {
    expect(knownRuns(values)).toEqual([
      { from: 1, values: [1, 2] },
      { from: 5, values: [3] },
    ]);
    const counted = overRuns({ startS: 0, stepS: 1, values }, (run) => run.map(() => run.length));
    expect(counted.values).toEqual([null, 2, 2, null, null, 1, null]);
  });
});
