import { describe, expect, it } from 'vitest';
import { leftInWords, secondsLeft } from '../../../electron/contract/timeLeft.ts';

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

  it.each([
    [0, 'a few seconds left'],
    [12, 'about 20 s left'],
    [50, 'about 50 s left'],
    [58, 'about 1 min left'],
    [200, 'about 3 min left'],
    [3600, 'about 1 h left'],
    [5400, 'about 1 h 30 min left'],
  ])('%d seconds are said as “%s”', (seconds, words) => {
    expect(leftInWords(seconds)).toBe(words);
  });
});
