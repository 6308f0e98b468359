import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { butterworthCoefficients, lowPass } from '../../../../engine/motion/signal/lowPass.ts';

const place = fc.double({ min: -1000, max: 1000, noNaN: true });
const filters = fc
  .record({
    sampleHz: fc.double({ min: 10, max: 240, noNaN: true }),
    share: fc.double({ min: 0.02, max: 0.6, noNaN: true }),
  })
  .map(({ sampleHz, share }) => ({ sampleHz, cutOffHz: (share * sampleHz) / 2 }));

const distances = (found: readonly number[], expected: readonly number[]) =>
  expected.map((value, i) => Math.abs((found[i] ?? Number.NaN) - value));

describe('the low-pass', () => {
  it('keeps constants and straight lines, however short', () => {
    fc.assert(
      fc.property(filters, place, place, fc.integer({ min: 1, max: 300 }), (filter, start, slope, count) => {
        const line = Array.from({ length: count }, (_, i) => start + slope * i);
        for (const distance of distances(lowPass(line, filter), line)) expect(distance).toBeLessThan(1e-4);
        const constant = line.map(() => start);
        for (const distance of distances(lowPass(constant, filter), constant)) expect(distance).toBeLessThan(1e-7);
      }),
    );
  });

  it('moves nothing in time: what is the same backwards stays so', () => {
    fc.assert(
      fc.property(filters, fc.array(place, { minLength: 1, maxLength: 80 }), (filter, half) => {
        const symmetric = [...half, ...half.toReversed()];
        const smooth = lowPass(symmetric, filter);
        for (const distance of distances(smooth, smooth.toReversed())) expect(distance).toBeLessThan(1e-4);
      }),
    );
  });

  it('is linear', () => {
    const pairs = fc.array(fc.tuple(place, place), { minLength: 2, maxLength: 60 });
    fc.assert(
      fc.property(filters, pairs, (filter, values) => {
        const one = lowPass(
          values.map(([a]) => a),
          filter,
        );
        const other = lowPass(
          values.map(([, b]) => b),
          filter,
        );
        const sum = lowPass(
          values.map(([a, b]) => a + 2 * b),
          filter,
        );
        for (const distance of distances(
          sum,
          one.map((a, i) => a + 2 * (other[i] ?? 0)),
        )) {
          expect(distance).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('puts the peak of a pulse where it was', () => {
    const pulse = Array.from({ length: 121 }, (_, i) => Math.exp(-(((i - 60) / 4) ** 2)));
    const smooth = lowPass(pulse, { sampleHz: 60, cutOffHz: 4 });
    expect(smooth.indexOf(Math.max(...smooth))).toBe(60);
  });

  it('takes nothing away with a cut-off at half the sampling rate or above', () => {
    expect(lowPass([3, -1, 4, -1, 5], { sampleHz: 10, cutOffHz: 5 })).toEqual([3, -1, 4, -1, 5]);
  });

  it.each([0, -3, Number.NaN])('refuses a cut-off of %d Hz', (cutOffHz) => {
    expect(() => lowPass([1, 2, 3], { sampleHz: 60, cutOffHz })).toThrow(RangeError);
  });
});

describe('the recursion', () => {
  it.each([
    { cutOffHz: 30, sampleHz: 60, passes: 2 },
    { cutOffHz: 0, sampleHz: 60, passes: 2 },
    { cutOffHz: 6, sampleHz: 60, passes: 0 },
  ])('refuses %o', (setting) => {
    expect(() => butterworthCoefficients(setting)).toThrow(RangeError);
  });
});
