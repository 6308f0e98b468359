import type { ReviewAgreement } from '../../engine/agreement/compareReviews.ts';
import type { IntraclassCorrelation } from '../../engine/agreement/intraclass.ts';
import { type Estimate, kappaBand } from '../../engine/agreement/kappa.ts';
import { shownCoefficient } from '../../engine/rubric/shownNumbers.ts';
import { agreedShare, counted, points } from '../base/figures.ts';

const figures: readonly { readonly name: string; readonly means: string }[] = [
  {
    name: 'Moment',
    means: 'One criterion on one rep that both looked at; its severity is the heaviest of its flags there.',
  },
  {
    name: 'Same',
    means: 'How many moments got the same severity. Easy to read, but two who flag little agree by chance.',
  },
  {
    name: 'Kappa',
    means: 'Agreement beyond chance: 1 is always, 0 is no better than chance. Low when one severity is rare.',
  },
  {
    name: 'Kappa, quadratic',
    means: 'The same, but prefer against adjust counts as a smaller difference than prefer against stop.',
  },
  { name: 'AC1', means: 'Agreement beyond chance that holds its value when nearly everything is fine.' },
  {
    name: 'Alpha, ordinal',
    means: 'Agreement on the order of the severities. From 0.80 on, it is commonly called reliable.',
  },
  {
    name: 'ICC(2,1) of scores',
    means: 'How alike the scores of the reps are, point for point: one who is stricter throughout lowers it.',
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
export function inWords({ overall, onlyFirst, onlySecond, unpairedReps }: ReviewAgreement): string {
  if (overall.moments === 0) return 'Nothing was looked at in both, so there is nothing to compare yet.';
  const verb = overall.moments === 1 ? 'was' : 'were';
  const same = `Of ${counted(overall.moments, 'moment')} that both looked at, ${agreedShare(overall.percent ?? 0)} ${verb} judged the same.`;
  const kappa =
    overall.kappa === null
      ? 'Kappa can’t be had: both used one and the same severity throughout.'
      : `Beyond chance that is ${kappaBand(overall.kappa.value)} agreement (kappa ${two(overall.kappa.value)}; bands of Landis and Koch, 1977).`;
  const alone =
    onlyFirst + onlySecond === 0
      ? ''
      : ` Left out, because one alone looked: ${onlyFirst} in the first, ${onlySecond} in the second.`;
  const unpaired =
    unpairedReps.length === 0
      ? ''
      : ` ${counted(unpairedReps.length, 'rep')} ${unpairedReps.length === 1 ? 'is' : 'are'} marked in one of the two alone; reps are paired by their time.`;
  return `${same} ${kappa}${apartInWords(overall.meanDifference ?? 0)}${alone}${unpaired}`;
}

/** Who scores higher on average, where it shows: two who are a steady distance apart agree in order alone. */
function apartInWords(meanDifference: number): string {
  const size = points(Math.abs(meanDifference));
  if (size === '0.0') return '';
  return ` On average the ${meanDifference > 0 ? 'first' : 'second'} scores ${size} points higher.`;
}

/** A figure between -1 and 1 with two decimals; a dash where there is none. */
export function two(value: number | null | undefined): string {
  if (value === null || value === undefined) return '–';
  return shownCoefficient(value, 2).toFixed(2).replace('-', '−');
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

/** Absolute agreement of scores, or why there is none to tell. */
export function Absolute({ intraclass }: { readonly intraclass: IntraclassCorrelation }) {
  const form = intraclass.kind === 'estimated' ? intraclass.twoWayRandomSingle : intraclass;
  switch (form.kind) {
    case 'known':
      return <Between estimate={form} />;
    case 'noSpread':
      return <span className="soft">no spread</span>;
    case 'tooFewToTell':
      return <span className="soft">too few to tell</span>;
  }
}

/** A share as a percentage, with its interval. */
export function ShareBetween({ value, interval }: { readonly value: number | null; readonly interval: Interval }) {
  if (value === null) return <>–</>;
  return (
    <>
      {agreedShare(value)}
      {interval !== null && (
        <span className="soft interval">
          {agreedShare(interval.low)} to {agreedShare(interval.high)}
        </span>
      )}
    </>
  );
}
