import { expect, it } from 'vitest';
import { formatClock } from '../../../engine/time/writtenTime.ts';

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
