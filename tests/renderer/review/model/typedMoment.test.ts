import { describe, expect, it } from 'vitest';
import { formatClock } from '../../../../engine/time/writtenTime.ts';
import { frameOfTyped } from '../../../../renderer/review/model/typedMoment.ts';

/** Four frames at 29.97 a second, a long one, and one more. */
const ticks = [0, 1001, 2002, 3003, 34_004, 35_005];
const table = { timeBase: { numerator: 1, denominator: 30_000 }, ticks, endTicks: 36_006 };

describe('a moment that was typed', () => {
  it('is the frame whose time it is, to the millisecond that is printed', () => {
    for (const [frame, tick] of ticks.entries()) {
      const printed = formatClock((tick / 30_000) * 1_000_000);
      expect(frameOfTyped(printed, {}, table)).toBe(frame);
      expect(frameOfTyped(printed.replace('.', ','), {}, table)).toBe(frame);
    }
  });

  it('is the frame that is shown then, also without minutes', () => {
    expect(frameOfTyped('0:01.000', {}, table)).toBe(3);
    expect(frameOfTyped(' 0.9 ', {}, table)).toBe(3);
  });

  it('is a frame by its number where there are only digits', () => {
    expect(frameOfTyped('5', {}, table)).toBe(5);
    expect(frameOfTyped('6', {}, table)).toBeNull();
  });

  it('is none outside the clip, and none that is no time', () => {
    for (const typed of ['1:00', '0:01.201', '-1.0', '', 'soon', '1:2:3', '0:0a', '9'.repeat(30)])
      expect(frameOfTyped(typed, {}, table)).toBeNull();
  });

  it('is told by the clip’s own clock and count where it shows a section', () => {
    // Frames 2 to 4: the clip’s 0:00.000 is 2002 / 30000 s, and it ends when frame 4 goes, 33003 ticks later.
    const clip = { section: { from: { frame: 2, ticks: 2002 }, to: { frame: 4, ticks: 34_004 } } };
    expect(['0', '1', '2', '3'].map((typed) => frameOfTyped(typed, clip, table))).toEqual([2, 3, 4, null]);
    expect(frameOfTyped('0:00.000', clip, table)).toBe(2);
    expect(frameOfTyped('0:00.033', clip, table)).toBe(3);
    // (34004 - 2002) / 30000 s = 1.0667 s; (35005 - 2002) / 30000 s = 1.1001 s.
    expect(frameOfTyped('0:01.067', clip, table)).toBe(4);
    expect(frameOfTyped('0:01.099', clip, table)).toBe(4);
    expect(frameOfTyped('0:01.101', clip, table)).toBeNull();
  });
});
