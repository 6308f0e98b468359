import type { ReviewAgreement } from '../../engine/agreement/compareReviews.ts';
import type { IntraclassCorrelation } from '../../engine/agreement/intraclass.ts';
import { type Estimate, kappaBand } from '../../engine/agreement/kappa.ts';
import { shownCoefficient, shownScore } from '../../engine/rubric/shownNumbers.ts';
import { agreedShare, points, toHundredth } from '../base/figures.ts';
import { sayAgreement } from '../words/sayAgreement.ts';

/** The figures of the tables, each with what it means. */
const figures = [
  ['moment', 'momentMeans'],
  ['same', 'sameMeans'],
  ['kappa', 'kappaMeans'],
  ['quadraticKappa', 'quadraticKappaMeans'],
  ['ac1', 'ac1Means'],
  ['alpha', 'alphaMeans'],
  ['intraclass', 'intraclassMeans'],
] as const;

/** What each figure says, in plain words. */
export function FigureWords() {
  return (
    <details className="figure-words">
      <summary>{sayAgreement('whatFiguresMean')}</summary>
      <dl>
        {figures.map(([name, means]) => (
          <div key={name}>
            <dt>{sayAgreement(name)}</dt>
            <dd>{sayAgreement(means)}</dd>
          </div>
        ))}
      </dl>
      <p className="soft">{sayAgreement('intervalsMean')}</p>
    </details>
  );
}

/** The figures over all in a few sentences. */
export function inWords({ overall, onlyFirst, onlySecond, unpairedReps }: ReviewAgreement): string {
  const { moments, percent, kappa, meanDifference } = overall;
  if (moments === 0) return sayAgreement('nothingInBoth');
  return [
    sayAgreement('sameOf', { moments, share: agreedShare(percent ?? 0) }),
    kappa === null
      ? sayAgreement('noKappa')
      : sayAgreement('beyondChance', { band: kappaBand(kappa.value), kappa: two(kappa.value) }),
    apartInWords(meanDifference ?? 0),
    onlyFirst + onlySecond === 0 ? '' : sayAgreement('oneAlone', { first: onlyFirst, second: onlySecond }),
    unpairedReps.length === 0 ? '' : sayAgreement('unpaired', { count: unpairedReps.length }),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** Who scores higher on average, where it shows: two who are a steady distance apart agree in order alone. */
function apartInWords(meanDifference: number): string {
  const apart = Math.abs(meanDifference);
  if (shownScore(apart) === 0) return '';
  return sayAgreement('scoresHigher', { which: meanDifference > 0 ? 'first' : 'second', points: points(apart) });
}

/** A figure between -1 and 1 with two decimals; a dash where there is none. */
export function two(value: number | null | undefined): string {
  if (value === null || value === undefined) return '–';
  return toHundredth(shownCoefficient(value, 2));
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
        <span className="soft interval">{sayAgreement('interval', { low: two(low), high: two(high) })}</span>
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
      return <span className="soft">{sayAgreement('noSpread')}</span>;
    case 'tooFewToTell':
      return <span className="soft">{sayAgreement('tooFew')}</span>;
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
          {sayAgreement('interval', { low: agreedShare(interval.low), high: agreedShare(interval.high) })}
        </span>
      )}
    </>
  );
}
