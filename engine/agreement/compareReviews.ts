import type { Catalogue } from '../exercises/catalogue.ts';
import type { Review } from '../review/review.ts';
import { type CriterionId, type Severity, severities } from '../rubric/rubric.ts';
import { type IntraclassCorrelation, intraclassCorrelation } from './intraclass.ts';
import { type CriterionOnRep, judgedTogether, type UnpairedRep, type Verdict } from './judgedMoments.ts';
import { cohenKappa, countPairs, type Estimate, gwetAc1, percentAgreement, shareInterval } from './kappa.ts';
import { krippendorffAlpha } from './krippendorffAlpha.ts';

/** One criterion on one rep (or one unmarked set), as both reviewers judged it. */
export type JudgedMoment = CriterionOnRep & {
  readonly first: Verdict;
  readonly second: Verdict;
  /** The rep as the second numbers it; null for a set without marked reps. */
  readonly secondRep: number | null;
};

export type AgreementFigures = {
  /** Moments that both reviewers looked at. */
  readonly moments: number;
  /** Share of them with the same heaviest severity, 0-1. */
  readonly percent: number | null;
  readonly percentInterval: { readonly low: number; readonly high: number } | null;
  readonly kappa: Estimate | null;
  readonly linearKappa: Estimate | null;
  readonly quadraticKappa: Estimate | null;
  readonly ac1: Estimate | null;
  readonly ordinalAlpha: number | null;
  readonly intervalAlpha: number | null;
  /** How many points higher the first scores a moment than the second, on average; below 0 where lower. */
  readonly meanDifference: number | null;
  /** Of the rep scores. */
  readonly intraclass: IntraclassCorrelation;
};

/** One severity against all others: did both use it on the same moments? */
export type SeverityFigures = Pick<AgreementFigures, 'moments' | 'percent' | 'percentInterval' | 'kappa' | 'ac1'> & {
  /** Moments that the first, the second and both gave this severity. */
  readonly first: number;
  readonly second: number;
  readonly both: number;
};

export type ReviewAgreement = {
  readonly overall: AgreementFigures;
  readonly perCriterion: readonly { readonly criterion: CriterionId; readonly figures: AgreementFigures }[];
  readonly perSeverity: readonly { readonly severity: Severity; readonly figures: SeverityFigures }[];
  /** Moments judged differently, largest difference in score first. */
  readonly differences: readonly JudgedMoment[];
  /** Moments only one of the two looked at. */
  readonly onlyFirst: number;
  readonly onlySecond: number;
  /** Reps that one marked and the other did not; their moments are among those only one looked at. */
  readonly unpairedReps: readonly UnpairedRep[];
};

function figuresOf(moments: readonly JudgedMoment[]): AgreementFigures {
  const pairs = moments.map(
    ({ first, second }) => [severities.indexOf(first.severity), severities.indexOf(second.severity)] as const,
  );
  const table = countPairs(pairs, severities.length);
  const firstScores = moments.map(({ first }) => first.score);
  const secondScores = moments.map(({ second }) => second.score);
  const percent = percentAgreement(table);
  return {
    moments: moments.length,
    percent,
    percentInterval: shareInterval(percent ?? 0, moments.length),
    kappa: cohenKappa(table),
    linearKappa: cohenKappa(table, 'linear'),
    quadraticKappa: cohenKappa(table, 'quadratic'),
    ac1: gwetAc1(table),
    ordinalAlpha: krippendorffAlpha([pairs.map(([first]) => first), pairs.map(([, second]) => second)], 'ordinal'),
    intervalAlpha: krippendorffAlpha([firstScores, secondScores], 'interval'),
    meanDifference:
      moments.length === 0
        ? null
        : moments.reduce((sum, { first, second }) => sum + first.score - second.score, 0) / moments.length,
    intraclass: intraclassCorrelation(moments.map(({ first, second }) => [first.score, second.score])),
  };
}

function figuresOfSeverity(moments: readonly JudgedMoment[], severity: Severity): SeverityFigures {
  const table = countPairs(
    moments.map(
      ({ first, second }) => [Number(first.severity !== severity), Number(second.severity !== severity)] as const,
    ),
    2,
  );
  const percent = percentAgreement(table);
  const count = (holds: (moment: JudgedMoment) => boolean): number => moments.filter(holds).length;
  return {
    moments: moments.length,
    first: count(({ first }) => first.severity === severity),
    second: count(({ second }) => second.severity === severity),
    both: count(({ first, second }) => first.severity === severity && second.severity === severity),
    percent,
    percentInterval: shareInterval(percent ?? 0, moments.length),
    kappa: cohenKappa(table),
    ac1: gwetAc1(table),
  };
}

/**
 * How far two reviews of the same clips agree: two coaches, a coach and the athlete, or one coach before and after
 * a blind second look. Moments are paired by entry, clip, time of the rep and criterion; only what both looked at counts.
 */
export function compareReviews(first: Review, second: Review, catalogue: Catalogue): ReviewAgreement {
  const { moments, unpairedReps } = judgedTogether([first, second], catalogue);
  const shared = moments.flatMap(({ verdicts: [ofFirst, ofSecond], numbers, ...moment }): JudgedMoment[] =>
    ofFirst && ofSecond ? [{ ...moment, first: ofFirst, second: ofSecond, secondRep: numbers[1] ?? null }] : [],
  );
  const judgedBy = (reviewer: number) => moments.filter(({ verdicts }) => verdicts[reviewer]).length;
  const criteria = [...new Set(shared.map(({ criterion }) => criterion))];
  return {
    overall: figuresOf(shared),
    perCriterion: criteria.map((criterion) => ({
      criterion,
      figures: figuresOf(shared.filter((moment) => moment.criterion === criterion)),
    })),
    perSeverity: severities.map((severity) => ({ severity, figures: figuresOfSeverity(shared, severity) })),
    differences: shared
      .filter(({ first: a, second: b }) => a.severity !== b.severity)
      .sort((a, b) => Math.abs(b.first.score - b.second.score) - Math.abs(a.first.score - a.second.score)),
    onlyFirst: judgedBy(0) - shared.length,
    onlySecond: judgedBy(1) - shared.length,
    unpairedReps,
  };
}
