import { expect, it } from 'vitest';
import { divideHalfUp, ticksToUs } from '../../../engine/time/moment.ts';

it.each([
  [1n, 2n, 1n],
  [-1n, 2n, 0n],
  [-3n, 2n, -1n],
  [5n, 3n, 2n],
  [-5n, 3n, -2n],
  [7n, 1n, 7n],
])('%d / %d is %d, half up', (dividend, divisor, quotient) => {
  expect(divideHalfUp(dividend, divisor)).toBe(quotient);
});

it('turns a 30th of a second into 33333 us, two into 66667', () => {
  const timeBase = { numerator: 1, denominator: 30 };
  expect(ticksToUs(1, timeBase)).toBe(33_333);
  expect(ticksToUs(2, timeBase)).toBe(66_667);
});

it('stays exact where a product of plain numbers would not: 10 days in ticks of 1/90000 s', () => {
  expect(ticksToUs(77_760_000_001, { numerator: 1, denominator: 90_000 })).toBe(864_000_000_011);
});
