import { describe, expect, it } from 'vitest';
import { secondsLeft } from '../../../electron/contract/timeLeft.ts';

describe('time left', () => {
  it('is what the rest takes at the speed so far', () => {
    expect(secondsLeft(30, 0.75)).toBeCloseTo(10, 9);
    expect(secondsLeft(30, 1)).toBe(0);
  });

  it('is not told before there is a speed to tell it from', () => {
    expect(secondsLeft(30, null)).toBeNull();
    expect(secondsLeft(30, 0)).toBeNull();
    expect(secondsLeft(0.1, 0.5)).toBeNull();
  });
});
