import fc from 'fast-check';
import { expect, it } from 'vitest';
import { formatClock, parseClock } from '../../../engine/time/clock.ts';

it.each([
  [0, '0:00.000'],
  [499, '0:00.000'],
  [500, '0:00.001'],
  [65_040_000, '1:05.040'],
  [59_999_499, '0:59.999'],
  [59_999_500, '1:00.000'],
  [4_500_000_000, '75:00.000'],
  [-1_500_000, '-0:01.500'],
  [-400, '0:00.000'],
])('%d us is %s', (us, text) => {
  expect(formatClock(us)).toBe(text);
});

it.each([
  ['0:07', 7_000_000],
  ['1:05.04', 65_040_000],
  ['1:15:00.000', 4_500_000_000],
  ['75:00', 4_500_000_000],
  ['-0:01.5', -1_500_000],
  ['0:00.0000005', 1],
])('%s is %d us', (text, us) => {
  expect(parseClock(text)).toBe(us);
});

it.each(['', '7', '0:60', '0:5', '1:60:00', '0:07,5', '0:07.', ' 0:07', 'a:bc'])('refuses "%s"', (text) => {
  expect(parseClock(text)).toBeNull();
});

it('reads back every whole millisecond', () => {
  fc.assert(
    fc.property(fc.integer({ min: -1e8, max: 1e9 }), (milliseconds) => {
      expect(parseClock(formatClock(milliseconds * 1000))).toBe(milliseconds * 1000);
    }),
  );
});
