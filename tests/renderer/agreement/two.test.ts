import { expect, it } from 'vitest';
import { two } from '../../../renderer/agreement/Between.tsx';

it('writes a figure with two decimals, a true minus sign, and no minus before nothing', () => {
  expect([0.724, -0.514, -0.004, 0, null].map(two)).toEqual(['0.72', '−0.51', '0.00', '0.00', '–']);
});
