import type { ReviewAgreement } from '../../engine/agreement/compareReviews.ts';
import { type Estimate, kappaBand } from '../../engine/agreement/kappa.ts';
import { counted, share } from '../base/figures.ts';

const figures: readonly { readonly name: string; readonly means: string }[] = [
  {
    name: 'Moment',
    means: 'One criterion on one rep that both looked at; its weight is the heaviest of its flags there.',
  },
  {
    name: 'Same',
    means: 'How many moments got the same weight. Easy to read, but two who flag little agree by chance.',
  },
  {
    name: 'Kappa',
    means: 'Agreement beyond chance: 1 is always, 0 is no better than chance. Low when one weight is rare.',
  },
  {
    name: 'Kappa, quadratic',
    means: 'The same, but prefer against adjust counts as a smaller difference than prefer against stop.',
  },
  { name: 'AC1', means: 'Agreement beyond chance that holds its value when nearly everything is fine.' },
  {
    name: 'Alpha, ordinal',
    means: 'Agreement on the order of the weights. From 0.80 on, it is commonly called reliable.',
  },
  {
    name: 'ICC(2,1) of scores',
    means: 'How alike the scores of the reps are, point for point, not only in their order.',
  },
];

/** What each figure says, in plain words. */
export function FigureWords() {
  return (
    <details className="figure-words">
      <summary>What the figures mean</summary>
      <dl>
        {figures.map(({ name, means }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{means}</dd>
          </div>
        ))}
      </dl>
      <p className="soft">
        The smaller figures are 95 % intervals: with few moments they are wide, and where there is too little to tell,
        there is none. A single set says little; several sessions say more.
      </p>
    </details>
  );
}

/** The figures over all in two or three sentences. */
export function inWords({ overall, onlyFirst, onlySecond }: ReviewAgreement): string {
  if (overall.moments === 0) return 'Nothing was looked at in both, so there is nothing to compare yet.';
  const verb = overall.moments === 1 ? 'was' : 'were';
  const same = `Of ${counted(overall.moments, 'moment')} that both looked at, ${share(overall.percent ?? 0)} ${verb} judged the same.`;
  const kappa =
    overall.kappa === null
      ? 'Kappa can’t be had: both used one and the same weight throughout.'
      : `Beyond chance that is ${kappaBand(overall.kappa.value)} agreement (kappa ${two(overall.kappa.value)}; bands of Landis and Koch, 1977).`;
  const alone =
    onlyFirst + onlySecond === 0
      ? ''
      : ` Left out, because one alone looked: ${onlyFirst} in the first, ${onlySecond} in the second.`;
  return `${same} ${kappa}${alone}`;
}

/** A figure between -1 and 1 with two decimals; a dash where there is none. */
export function two(value: number | null | undefined): string {
  if (value === null || value === undefined) return '–';
  const words = value.toFixed(2);
  return words === '-0.00' ? '0.00' : words.replace('-', '−');
}

type Interval = { readonly low: number; readonly high: number } | null;

/** An estimate, and softly the interval it lies in; without one where there is too little to tell. */
export function Between({ estimate }: { readonly estimate: Estimate | null | undefined }) {
  if (estimate === null || estimate === undefined) return <>–</>;
  const { value, low, high } = estimate;
  return (
    <>
      {two(value)}
      {low !== null && high !== null && (
        <span className="soft interval">
          {two(low)} to {two(high)}
        </span>
      )}
    </>
  );
}

/** A share as a percentage, with its interval. */
export function ShareBetween({ value, interval }: { readonly value: number | null; readonly interval: Interval }) {
  if (value === null) return <>–</>;
  return (
    <>
      {share(value)}
      {interval !== null && (
        <span className="soft interval">
          {share(interval.low)} to {share(interval.high)}
        </span>
      )}
    </>
  );
}
