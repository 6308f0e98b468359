import fc from 'fast-check';
import { expect, it } from 'vitest';
import { markFor } from '../../../engine/rubric/rubric.ts';
import { shownCoefficient, shownGain, shownPercent, shownScore } from '../../../engine/rubric/shownNumbers.ts';
import { shippedRubric } from '../catalogue.ts';

it('never shows a score whose letter the score did not earn', () => {
  const rubric = shippedRubric();
  fc.assert(
    fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (score) => {
      expect(markFor(shownScore(score), rubric).mark).toBe(markFor(score, rubric).mark);
    }),
  );
});

it('shows a whole score whole, also after binary arithmetic', () => {
  expect(shownScore(100 * 0.83)).toBe(83);
  expect(shownScore(92.99999999999999)).toBe(93);
  expect(shownScore(89.97)).toBe(89.9);
});

it('shows a share in whole per cent, never up to a bound that it did not reach', () => {
  expect(shownPercent(199 / 200)).toBe(99);
  expect(shownPercent(0.596)).toBe(59);
  expect(shownPercent(0.6 - 1e-12)).toBe(60);
  expect(shownPercent(0.29)).toBe(29);
  expect([0, 1].map(shownPercent)).toEqual([0, 100]);
});

it('never promises a mark by adding a shown gain to a shown score', () => {
  const rubric = shippedRubric();
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (score, share) => {
        const gain = share * (100 - score);
        const promised = Math.min(100, shownScore(score) + shownGain(gain, 1));
        expect(markFor(promised, rubric).gradePoints).toBeLessThanOrEqual(
          markFor(Math.min(100, score + gain), rubric).gradePoints,
        );
      },
    ),
  );
});

it('shows a coefficient to the nearest, keeps 1 for what is complete, and has no minus nothing', () => {
  expect([0.556, -0.556, 0.997, -0.997, 1, -1].map((value) => shownCoefficient(value, 2))).toEqual([
    ...[0.56, -0.56, 0.99, -0.99, 1, -1],
  ]);
  expect(Object.is(shownCoefficient(-0.004, 2), 0)).toBe(true);
  expect(shownCoefficient(0.995, 2)).toBe(0.99);
});
