import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  browserSeekUs,
  frameAtUs,
  frameEndUs,
  frameStartUs,
  nearestFrame,
  seekTargetUs,
} from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';

/** Frames at least a millisecond apart, in common time bases, starting anywhere. */
const tables: fc.Arbitrary<FrameTable> = fc
  .record({
    denominator: fc.constantFrom(1000, 15_360, 30_000, 90_000, 1_000_000),
    first: fc.integer({ min: -1000, max: 1e12 }),
    gapsMs: fc.array(fc.integer({ min: 2, max: 500 }), { minLength: 1, maxLength: 60 }),
  })
  .map(({ denominator, first, gapsMs }) => {
    const ticks = [first];
    for (const gap of gapsMs) ticks.push((ticks.at(-1) ?? first) + Math.max(2, Math.round((gap * denominator) / 1000)));
    const endTicks = ticks.pop() ?? first;
    return { timeBase: { numerator: 1, denominator }, ticks, endTicks };
  });

const everyFrame = (table: FrameTable) => table.ticks.map((_, frame) => frame);

describe('any table', () => {
  it('shows a frame from its start, and its middle lies within it', () => {
    fc.assert(
      fc.property(tables, (table) => {
        for (const frame of everyFrame(table)) {
          expect(frameAtUs(table, frameStartUs(table, frame))).toBe(frame);
          expect(frameAtUs(table, frameEndUs(table, frame) - 1)).toBe(frame);
          expect(frameAtUs(table, seekTargetUs(table, frame))).toBe(frame);
          expect(nearestFrame(table, frameStartUs(table, frame))).toBe(frame);
          expect(seekTargetUs(table, frame)).toBeGreaterThan(frameStartUs(table, frame));
          expect(seekTargetUs(table, frame)).toBeLessThan(frameEndUs(table, frame));
        }
      }),
    );
  });

  it('finds the nearest frame as a plain search does', () => {
    fc.assert(
      fc.property(tables, fc.double({ min: -0.1, max: 1.1, noNaN: true }), (table, part) => {
        const from = frameStartUs(table, 0);
        const us = Math.round(from + part * (frameEndUs(table, table.ticks.length - 1) - from));
        const distances = everyFrame(table).map((frame) => Math.abs(frameStartUs(table, frame) - us));
        expect(nearestFrame(table, us)).toBe(distances.indexOf(Math.min(...distances)));
      }),
    );
  });
});

describe('a clip of variable rate', () => {
  const file = new URL('../../footage/squat-variable-rate.truth.json', import.meta.url);
  const truth: { pts: number[] } = JSON.parse(readFileSync(file, 'utf8'));
  const ticks = truth.pts.map((seconds) => Math.round(seconds * 90_000));
  const table: FrameTable = {
    timeBase: { numerator: 1, denominator: 90_000 },
    ticks,
    endTicks: (ticks.at(-1) ?? 0) + 3000,
  };

  it('gives back the times of its frames to the microsecond that the truth states', () => {
    const worst = Math.max(...truth.pts.map((seconds, frame) => Math.abs(frameStartUs(table, frame) - seconds * 1e6)));
    expect(worst).toBeLessThanOrEqual(6);
  });

  it('seeks to the middle of a frame by hand: frame 1 lasts from 31333 to 70978 us', () => {
    expect(Math.abs(seekTargetUs(table, 1) - (31_333 + 70_978) / 2)).toBeLessThanOrEqual(6);
  });
});

it('before the first frame shows the first, after the end the last', () => {
  const table: FrameTable = { timeBase: { numerator: 1, denominator: 1000 }, ticks: [40, 80], endTicks: 120 };
  expect(frameAtUs(table, -5)).toBe(0);
  expect(frameAtUs(table, 79_999)).toBe(0);
  expect(frameAtUs(table, 80_000)).toBe(1);
  expect(frameAtUs(table, 1e9)).toBe(1);
  expect(seekTargetUs(table, 1)).toBe(100_000);
  expect(() => frameStartUs(table, 2)).toThrow(RangeError);
});

describe('where a browser seeks for a frame', () => {
  // Frames at 0, 1, 3, 4, 6 and 7 thirtieths, the last until 9: every second one lasts two thirtieths.
  const uneven = { timeBase: { numerator: 1, denominator: 30 }, ticks: [0, 1, 3, 4, 6, 7], endTicks: 9 };

  it('is half of a short frame after it appears, also for a long one: (1 + 0.5) / 30 s', () => {
    expect(browserSeekUs(uneven, 0)).toBe(16_667);
    expect(browserSeekUs(uneven, 1)).toBe(50_000);
    expect(browserSeekUs(uneven, 5)).toBe(250_000);
  });

  it('is the middle at an even rate', () => {
    const even = { timeBase: { numerator: 1001, denominator: 30_000 }, ticks: [0, 1, 2, 3], endTicks: 4 };
    for (const frame of [0, 1, 2, 3]) {
      expect(Math.abs(browserSeekUs(even, frame) - seekTargetUs(even, frame))).toBeLessThanOrEqual(1);
    }
  });
});
