import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutsBetween, partsOf } from '../../../engine/framing/cuts.ts';
import { clockZeroUs, framesShown, tableOf } from '../../../engine/framing/section.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';

/** A minute at ten frames a second, in thousandths. */
const table: FrameTable = {
  timeBase: { numerator: 1, denominator: 1000 },
  ticks: Array.from({ length: 600 }, (_, frame) => 100 * frame),
  endTicks: 60_000,
};
const section = { from: { frame: 20, ticks: 2000 }, to: { frame: 49, ticks: 4900 } };

describe('a section of footage', () => {
  it('holds its frames by the footage’s own numbers', () => {
    expect(framesShown(section, table)).toEqual({ firstFrame: 20, lastFrame: 49 });
    expect(framesShown(null, table)).toEqual({ firstFrame: 0, lastFrame: 599 });
  });

  it('ends within footage that turns out shorter', () => {
    expect(framesShown(section, { ticks: table.ticks.slice(0, 30) })).toEqual({ firstFrame: 20, lastFrame: 29 });
  });

  it('lasts from its first frame to the end of its last', () => {
    const own = tableOf(table, framesShown(section, table));
    expect(own.ticks).toHaveLength(30);
    expect([own.ticks[0], own.ticks.at(-1), own.endTicks]).toEqual([2000, 4900, 5000]);
    expect(tableOf(table, { firstFrame: 590, lastFrame: 599 }).endTicks).toBe(60_000);
  });

  it('has a clock that begins with it', () => {
    expect(clockZeroUs(section, table.timeBase)).toBe(2_000_000);
    expect(clockZeroUs(undefined, table.timeBase)).toBe(0);
  });
});

const rep = (startS: number, endS: number) => ({ firstFrame: 10 * startS, lastFrame: 10 * endS });

describe('where footage of several sets is cut', () => {
  it('is the middle of each long pause', () => {
    const reps = [rep(1, 3), rep(4, 6), rep(7, 9), rep(25, 27), rep(28, 30), rep(45, 47), rep(48, 50)];
    expect(cutsBetween(reps, table)).toEqual([170, 375]);
  });

  it('is nowhere within one set, however slow it is', () => {
    expect(cutsBetween([rep(0, 2), rep(9, 11), rep(18, 20), rep(27, 29)], table)).toEqual([]);
    expect(cutsBetween([rep(1, 3)], table)).toEqual([]);
    expect(cutsBetween([], table)).toEqual([]);
  });

  it('is between two single reps far apart', () => {
    expect(cutsBetween([rep(2, 4), rep(30, 32)], table)).toEqual([170]);
  });
});

it('the parts of a range follow each other without a gap and make it up, whatever the cuts', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 100 }),
      fc.integer({ min: 0, max: 200 }),
      fc.array(fc.integer({ min: -10, max: 400 }), { maxLength: 12 }),
      (firstFrame, length, cuts) => {
        const range = { firstFrame, lastFrame: firstFrame + length };
        const parts = partsOf(range, cuts);
        const frames = parts.flatMap((part) =>
          Array.from({ length: part.lastFrame - part.firstFrame + 1 }, (_, index) => part.firstFrame + index),
        );
        expect(frames).toEqual(Array.from({ length: length + 1 }, (_, index) => firstFrame + index));
        for (const cut of cuts) {
          if (cut > range.firstFrame && cut <= range.lastFrame)
            expect(parts.some((part) => part.firstFrame === cut)).toBe(true);
        }
      },
    ),
  );
});
