import { expect, it, onTestFinished } from 'vitest';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import { inWords, two } from '../../../renderer/agreement/FigureWords.tsx';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';
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
    '75% of the 4 moments that both looked at got the same severity. ' +
      'Beyond chance, agreement is moderate (kappa 0.60; bands of Landis and Koch, 1977). ' +
      // Prefer leaves 92 points of rep 2, correct 40; the other three are level: 52 / 4.
      'On average the first scores 13.0 points higher. ' +
      'Left out because only one looked: 4 in the first, 0 in the second.',
  );
});

it('says the same in German on a German desk', () => {
  deskLanguage.getState().choose('de');
  onTestFinished(() => deskLanguage.getState().choose('en'));
  const first = { flags: [depth('correct', 1), depth('prefer', 2)], ticks: ticks('pauses') };
  const second = { flags: [depth('correct', 1), depth('correct', 2)] };
  expect(saidOf(first, second)).toBe(
    '75\u00A0% der 4 Stellen, die in beiden Urteilen angesehen sind, haben dieselbe Schwere. ' +
      'Über den Zufall hinaus ist die Übereinstimmung mittelmäßig (Kappa 0,60; Stufen nach Landis und Koch, 1977). ' +
      'Das erste Urteil gibt im Mittel 13,0 Punkte mehr. ' +
      'Ausgelassen, weil nur in einem Urteil angesehen: 4 im ersten, 0 im zweiten.',
  );
  expect([0.724, -0.514].map(two)).toEqual(['0,72', '−0,51']);
});

it('says that kappa can’t be had where all is fine, and that there is nothing where nobody looked', () => {
  const fine = { ticks: ticks('depth') };
  expect(saidOf(fine, fine)).toMatch(/^100% of the 4 moments .*There is no kappa: both used one and the same/);
  expect(saidOf(fine, {})).toMatch(/nothing to compare yet/);
});

it('tells the reps that one of the two left unmarked', () => {
  const flags = [depth('correct', 2)];
  expect(saidOf({ flags }, { flags, clips: [clip({ reps: reps(4).slice(1) })] })).toMatch(
    /1 rep is marked in only one of the two; reps are paired by their time\.$/,
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
