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
      expect(frameOfTyped(printed, table)).toBe(frame);
      expect(frameOfTyped(printed.replace('.', ','), table)).toBe(frame);
    }
  });

  it('is the frame that is shown then, also without minutes', () => {
    expect(frameOfTyped('0:01.000', table)).toBe(3);
    expect(frameOfTyped(' 0.9 ', table)).toBe(3);
  });

  it('is a frame by its number where there are only digits', () => {
    expect(frameOfTyped('5', table)).toBe(5);
    expect(frameOfTyped('6', table)).toBeNull();
  });

  it('is none outside the clip, and none that is no time', () => {
    for (const typed of ['1:00', '0:01.201', '-1.0', '', 'soon', '1:2:3', '0:0a', '9'.repeat(30)])
      expect(frameOfTyped(typed, table)).toBeNull();
  });
});
