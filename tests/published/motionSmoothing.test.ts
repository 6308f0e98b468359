import { describe, expect, it } from 'vitest';
import { savitzkyGolay, savitzkyGolayWeights } from '../../engine/motion/signal/savitzkyGolay.ts';

type Case = {
  readonly points: number;
  /** Degrees of the polynomial that have these weights in common. */
  readonly degrees: readonly number[];
  readonly derivative: number;
  readonly numerators: readonly number[];
  readonly denominator: number;
};

// Savitzky & Golay 1964, Anal Chem 36:1627, with the misprints put right as by Steinier, Termonia & Deltour 1972 (the
// corrections from memory); the fractions were computed anew by least squares, apart from this program.
const table: readonly Case[] = [
  { points: 5, degrees: [2, 3], derivative: 0, numerators: [-3, 12, 17, 12, -3], denominator: 35 },
  { points: 7, degrees: [2, 3], derivative: 0, numerators: [-2, 3, 6, 7, 6, 3, -2], denominator: 21 },
  { points: 9, degrees: [2, 3], derivative: 0, numerators: [-21, 14, 39, 54, 59, 54, 39, 14, -21], denominator: 231 },
  {
    points: 11,
    degrees: [2, 3],
    derivative: 0,
    numerators: [-36, 9, 44, 69, 84, 89, 84, 69, 44, 9, -36],
    denominator: 429,
  },
  { points: 5, degrees: [1, 2], derivative: 1, numerators: [-2, -1, 0, 1, 2], denominator: 10 },
  { points: 7, degrees: [1, 2], derivative: 1, numerators: [-3, -2, -1, 0, 1, 2, 3], denominator: 28 },
  { points: 9, degrees: [1, 2], derivative: 1, numerators: [-4, -3, -2, -1, 0, 1, 2, 3, 4], denominator: 60 },
  {
    points: 11,
    degrees: [1, 2],
    derivative: 1,
    numerators: [-5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5],
    denominator: 110,
  },
  { points: 5, degrees: [3, 4], derivative: 1, numerators: [1, -8, 0, 8, -1], denominator: 12 },
  { points: 7, degrees: [3, 4], derivative: 1, numerators: [22, -67, -58, 0, 58, 67, -22], denominator: 252 },
  {
    points: 9,
    degrees: [3, 4],
    derivative: 1,
    numerators: [86, -142, -193, -126, 0, 126, 193, 142, -86],
    denominator: 1188,
  },
  { points: 5, degrees: [2, 3], derivative: 2, numerators: [2, -1, -2, -1, 2], denominator: 7 },
  { points: 7, degrees: [2, 3], derivative: 2, numerators: [5, 0, -3, -4, -3, 0, 5], denominator: 42 },
];
const cases = table.flatMap(({ degrees, ...row }) => degrees.map((degree) => ({ ...row, degree })));

describe('Savitzky-Golay weights', () => {
  it.each(cases)('$points points, degree $degree, derivative $derivative', (row) => {
    const weights = savitzkyGolayWeights({
      halfWidth: (row.points - 1) / 2,
      degree: row.degree,
      derivative: row.derivative,
    });
    expect(weights).toHaveLength(row.points);
    for (const [i, numerator] of row.numerators.entries()) {
      expect(weights[i]).toBeCloseTo(numerator / row.denominator, 12);
    }
  });

  // Sum of squared weights: follows from the published fractions.
  it.each([
    [5, 17 / 35],
    [7, 1 / 3],
    [9, 59 / 231],
  ])('leave a share of white noise: %d points, variance × %d', (points, expected) => {
    const weights = savitzkyGolayWeights({ halfWidth: (points - 1) / 2, degree: 2 });
    expect(weights.reduce((sum, weight) => sum + weight ** 2, 0)).toBeCloseTo(expected, 12);
  });

  // Arithmetic on the weights: 2 mm of white noise at 30 frames a second as noise of the speed.
  it.each([
    [5, Math.sqrt(10), 0.019],
    [7, Math.sqrt(28), 0.0113],
    [9, Math.sqrt(60), 0.0077],
  ])('noise of a speed over %d points: σ × rate / %d', (points, divisor, mps) => {
    const weights = savitzkyGolayWeights({ halfWidth: (points - 1) / 2, degree: 2, derivative: 1 });
    const speedNoise = 0.002 * 30 * Math.sqrt(weights.reduce((sum, weight) => sum + weight ** 2, 0));
    expect(speedNoise).toBeCloseTo((0.002 * 30) / divisor, 12);
    expect(speedNoise).toBeCloseTo(mps, 4);
  });

  it('noise of a plain central difference: σ × rate / √2', () => {
    const weights = savitzkyGolayWeights({ halfWidth: 1, degree: 2, derivative: 1 });
    expect(weights).toEqual([expect.closeTo(-0.5, 12), expect.closeTo(0, 12), expect.closeTo(0.5, 12)]);
    expect(0.002 * 30 * Math.hypot(...weights)).toBeCloseTo(0.0424, 4);
  });
});

// Hand arithmetic with the published weights.
describe('Savitzky-Golay on a series', () => {
  it('is exact in the middle of 0, 1, 4, 9, 16, 25, 36', () => {
    const squares = [0, 1, 4, 9, 16, 25, 36];
    expect(savitzkyGolay(squares, { halfWidth: 3, degree: 2, derivative: 1 })[3]).toBeCloseTo(6, 12);
    expect(savitzkyGolay(squares, { halfWidth: 3, degree: 2 })[3]).toBeCloseTo(9, 12);
  });

  it('gives the place and the speed of a bar at 30 frames a second', () => {
    const heightsM = [0, 0.01, 0.04, 0.1, 0.15, 0.19, 0.21];
    const step = 1 / 30;
    const speedOver = (halfWidth: number) =>
      savitzkyGolay(heightsM, { halfWidth, degree: 2, derivative: 1, step })[3] ?? Number.NaN;
    expect(speedOver(3)).toBeCloseTo(1.17857, 5);
    expect(speedOver(2)).toBeCloseTo(1.41, 10);
    expect(savitzkyGolay(heightsM, { halfWidth: 3, degree: 2 })[3]).toBeCloseTo(0.0961905, 7);
  });
});
