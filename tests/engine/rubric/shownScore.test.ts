import fc from 'fast-check';
import { expect, it } from 'vitest';
import { markFor, shownScore } from '../../../engine/rubric/rubric.ts';
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
