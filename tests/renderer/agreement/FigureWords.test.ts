import { expect, it } from 'vitest';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import { inWords, two } from '../../../renderer/agreement/FigureWords.tsx';
import { catalogueOf, exercise } from '../../engine/catalogue.ts';
import { clip, entry, flag, reps, review, ticks } from '../../engine/reviews.ts';

const catalogue = catalogueOf(exercise());
const clips = [clip({ reps: reps(4) })];
const depth = (severity: 'prefer' | 'correct', rep: number) =>
  flag({ id: `f${rep}`, criterion: 'depth', severity, reps: [rep] });
const saidOf = (first: Parameters<typeof entry>[0], second: Parameters<typeof entry>[0]) =>
  inWords(compareReviews(review(entry({ clips, ...first })), review(entry({ clips, ...second })), catalogue));

it('says how many moments, how many the same, what that is beyond chance, and what was left out', () => {
  // Correct, prefer, keep, keep against correct, correct, keep, keep: kappa (0.75 - 0.375) / 0.625 = 0.60.
  const first = { flags: [depth('correct', 1), depth('prefer', 2)], ticks: ticks('pauses') };
  const second = { flags: [depth('correct', 1), depth('correct', 2)] };
  expect(saidOf(first, second)).toBe(
    'Of 4 moments that both looked at, 75% were judged the same. ' +
      'Beyond chance that is moderate agreement (kappa 0.60; bands of Landis and Koch, 1977). ' +
      // Prefer leaves 92 points of rep 2, correct 40; the other three are level: 52 / 4.
      'On average the first scores 13.0 points higher. ' +
      'Left out, because one alone looked: 4 in the first, 0 in the second.',
  );
});

it('says that kappa can’t be had where all is fine, and that there is nothing where nobody looked', () => {
  const fine = { ticks: ticks('depth') };
  expect(saidOf(fine, fine)).toMatch(/100% were judged the same\. Kappa can’t be had: both used one and the same/);
  expect(saidOf(fine, {})).toMatch(/nothing to compare yet/);
});

it('tells the reps that one of the two left unmarked', () => {
  const flags = [depth('correct', 2)];
  expect(saidOf({ flags }, { flags, clips: [clip({ reps: reps(4).slice(1) })] })).toMatch(
    /1 rep is marked in one of the two alone; reps are paired by their time\.$/,
  );
});

it('writes a figure with two decimals, a true minus sign, and no minus before nothing', () => {
  expect([0.724, -0.514, -0.004, 0, 0.997, 1, null].map(two)).toEqual([
    '0.72',
    '−0.51',
    '0.00',
    '0.00',
    '0.99',
    '1.00',
    '–',
  ]);
});
