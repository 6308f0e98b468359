import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kgOfLoad, loadIn } from '../../../engine/review/load.ts';

describe('a load in pounds', () => {
  // The international pound of 1959 is 0.45359237 kg exactly.
  it('is exact in kilograms', () => {
    expect(kgOfLoad(1, 'lb')).toBe(0.45359237);
    expect(kgOfLoad(100, 'lb')).toBeCloseTo(45.359237, 12);
    expect(kgOfLoad(60, 'kg')).toBe(60);
  });

  it.each([
    // Kilograms, pounds by hand, and what a bar can be loaded to.
    [61.2, 134.92, 135],
    [61.235, 134.9999, 135],
    [60, 132.28, 132.5],
    [20, 44.09, 44],
    [102.06, 225.0, 225],
    [0, 0, 0],
  ])('of %d kg (%d lb) is shown as %d lb', (kilograms, _, shown) => {
    expect(loadIn('lb', kilograms)).toBe(shown);
  });

  it('comes back as it was typed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200_000 }), (hundredths) => {
        const typed = hundredths / 100;
        expect(loadIn('lb', kgOfLoad(typed, 'lb'))).toBe(typed);
      }),
    );
  });

  it('is never shown more than a quarter of a pound away', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (kilograms) => {
        expect(Math.abs(loadIn('lb', kilograms) - kilograms / 0.45359237)).toBeLessThanOrEqual(0.25 + 1e-9);
      }),
    );
  });
});

it('is the number itself in kilograms', () => {
  expect(loadIn('kg', 61.25)).toBe(61.25);
});
