import { expect, it } from 'vitest';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import { inWords, two } from '../../../renderer/agreement/FigureWords.tsx';
import { catalogueOf, exercise } from '../../engine/catalogue.ts';
import { clip, entry, flag, reps, review, ticks } from '../../engine/reviews.ts';

const catalogue = catalogueOf(exercise());
const clips = [clip({ reps: reps(4) })];
const depth = (weight: 'prefer' | 'correct', rep: number) =>
  flag({ id: `f${rep}`, criterion: 'depth', weight, reps: [rep] });
const saidOf = (first: Parameters<typeof entry>[0], second: Parameters<typeof entry>[0]) =>
  inWords(compareReviews(review(entry({ clips, ...first })), review(entry({ clips, ...second })), catalogue));

it('says how many moments, how many the same, what that is beyond chance, and what was left out', () => {
  // Correct, prefer, keep, keep against correct, correct, keep, keep: kappa (0.75 - 0.375) / 0.625 = 0.60.
  const first = { flags: [depth('correct', 1), depth('prefer', 2)], ticks: ticks('pauses') };
  const second = { flags: [depth('correct', 1), depth('correct', 2)] };
  expect(saidOf(first, second)).toBe(
    'Of 4 moments that both looked at, 75% were judged the same. ' +
      'Beyond chance that is moderate agreement (kappa 0.60; bands of Landis and Koch, 1977). ' +
      'Left out, because one alone looked: 4 in the first, 0 in the second.',
  );
});

it('says that kappa can’t be had where all is fine, and that there is nothing where nobody looked', () => {
  const fine = { ticks: ticks('depth') };
  expect(saidOf(fine, fine)).toMatch(/100% were judged the same\. Kappa can’t be had: both used one and the same/);
  expect(saidOf(fine, {})).toMatch(/nothing to compare yet/);
});

it('writes a figure with two decimals, a true minus sign, and no minus before nothing', () => {
  expect([0.724, -0.514, -0.004, 0, null].map(two)).toEqual(['0.72', '−0.51', '0.00', '0.00', '–']);
});
