import { describe, expect, it } from 'vitest';
import { type CountTable, cohenKappa, gwetAc1 } from '../../../engine/agreement/kappa.ts';

const table: CountTable = [
  [40, 6, 1],
  [9, 25, 4],
  [2, 3, 10],
];
const n = table.flat().reduce((a, b) => a + b, 0);

/** The same table with a little more weight in one cell; both figures depend on the shares alone. */
const nudged = (at: number, to: number, by: number): number[][] =>
  table.map((row, i) => row.map((count, j) => (i === at && j === to ? count + by : count)));

/** Standard error by the delta method, with slopes found by nudging each cell: no formula of either paper. */
function errorByNudging(figure: (of: CountTable) => number): number {
  const step = 1e-4;
  const slopes = table.map((row, i) =>
    row.map((_, j) => ((figure(nudged(i, j, step)) - figure(nudged(i, j, -step))) / (2 * step)) * n),
  );
  // Slopes by count, times n, are the slopes by share with their mean over the table taken off already.
  const variance = table.reduce(
    (sum, row, i) => sum + row.reduce((inner, count, j) => inner + (count / n) * (slopes[i]?.[j] ?? 0) ** 2, 0),
    0,
  );
  return Math.sqrt(variance / n);
}

describe('a standard error is the one that nudging every cell gives', () => {
  it('of AC1', () => {
    expect(gwetAc1(table)?.standardError).toBeCloseTo(
      errorByNudging((of) => gwetAc1(of)?.value ?? Number.NaN),
      6,
    );
  });

  it.each(['plain', 'linear', 'quadratic'] as const)('of kappa, %s', (kind) => {
    expect(cohenKappa(table, kind)?.standardError).toBeCloseTo(
      errorByNudging((of) => cohenKappa(of, kind)?.value ?? Number.NaN),
      6,
    );
  });
});

describe('an interval', () => {
  it('lies 1.96 standard errors to either side, and within -1 and 1', () => {
    const { value, standardError, low, high } = gwetAc1(table) ?? { value: 0, standardError: 0, low: 0, high: 0 };
    expect(value - (low ?? 0)).toBeCloseTo(1.96 * standardError, 4);
    expect((high ?? 0) - value).toBeCloseTo(1.96 * standardError, 4);
    expect(
      cohenKappa([
        [1, 0],
        [1, 1],
      ])?.high,
    ).toBe(1);
  });

  it('is not claimed where the two agree on all three moments: there is no spread to tell it from', () => {
    const same = [
      [2, 0],
      [0, 1],
    ];
    expect(cohenKappa(same)).toMatchObject({ value: 1, low: null, high: null });
    expect(gwetAc1(same)).toMatchObject({ value: 1, low: null, high: null });
  });
});
