import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { savitzkyGolay, savitzkyGolayWeights } from '../../../../engine/motion/signal/savitzkyGolay.ts';

const coefficient = fc.double({ min: -2, max: 2, noNaN: true });

/** A window, a derivative it can hold, and a polynomial of its degree. */
const fits = fc
  .record({ halfWidth: fc.integer({ min: 1, max: 8 }), step: fc.double({ min: 0.01, max: 2, noNaN: true }) })
  .chain(({ halfWidth, step }) =>
    fc.integer({ min: 0, max: Math.min(4, 2 * halfWidth) }).chain((degree) =>
      fc.record({
        halfWidth: fc.constant(halfWidth),
        step: fc.constant(step),
        degree: fc.constant(degree),
        derivative: fc.integer({ min: 0, max: Math.min(2, degree) }),
        coefficients: fc.array(coefficient, { minLength: degree + 1, maxLength: degree + 1 }),
        extra: fc.integer({ min: 0, max: 20 }),
      }),
    ),
  );

/** A polynomial, lowest power first, or a derivative of it. */
function polynomialAt(coefficients: readonly number[], x: number, derivative: number): number {
  return coefficients.reduce((sum, factor, power) => {
    if (power < derivative) return sum;
    const falling = Array.from({ length: derivative }, (_, i) => power - i).reduce((product, one) => product * one, 1);
    return sum + factor * falling * x ** (power - derivative);
  }, 0);
}

describe('Savitzky-Golay', () => {
  it('gives polynomials up to its degree and their derivatives back, ends included', () => {
    fc.assert(
      fc.property(fits, ({ coefficients, extra, ...setting }) => {
        const count = 2 * setting.halfWidth + 1 + extra;
        const places = Array.from({ length: count }, (_, i) => (i - (count - 1) / 2) * setting.step);
        const found = savitzkyGolay(
          places.map((x) => polynomialAt(coefficients, x, 0)),
          setting,
        );
        const largest = Math.max(1, ...places.map((x) => Math.abs(polynomialAt(coefficients, x, 0))));
        const tolerance = (1e-8 * largest) / setting.step ** setting.derivative;
        expect(found).toHaveLength(count);
        for (const [i, x] of places.entries()) {
          const expected = polynomialAt(coefficients, x, setting.derivative);
          expect(Math.abs((found[i] ?? Number.NaN) - expected)).toBeLessThan(tolerance);
        }
      }),
    );
  });

  it('fits what there is where the series is shorter than the window', () => {
    const options = { halfWidth: 5, degree: 2, derivative: 1, step: 0.5 };
    expect(savitzkyGolay([], options)).toEqual([]);
    expect(savitzkyGolay([3], options)).toEqual([0]);
    for (const slope of savitzkyGolay([1, 2], options)) expect(slope).toBeCloseTo(2, 12);
    for (const [i, slope] of savitzkyGolay([0, 1, 4, 9], options).entries()) expect(slope).toBeCloseTo(4 * i, 10);
  });

  it.each([
    { halfWidth: 2, degree: 5 },
    { halfWidth: 2, degree: 1, derivative: 2 },
    { halfWidth: 1.5, degree: 1 },
    { halfWidth: 2, degree: -1 },
    { halfWidth: Number.NaN, degree: 0 },
  ])('refuses a window that can not hold the fit: %o', (window) => {
    expect(() => savitzkyGolayWeights(window)).toThrow(RangeError);
    expect(() => savitzkyGolay([1, 2, 3], window)).toThrow(RangeError);
  });
});
