import type { Catalogue } from '../exercises/catalogue.ts';
import type { Review } from '../review/review.ts';
import { type CriterionId, type Severity, severities } from '../rubric/rubric.ts';
import { type IntraclassCorrelation, intraclassCorrelation } from './intraclass.ts';
import { type CriterionOnRep, judgedTogether, type Moment, type UnpairedRep, type Verdict } from './judgedMoments.ts';
import { cohenKappa, countPairs, type Estimate, fleissKappa, percentAgreement } from './kappa.ts';
import { krippendorffAlpha } from './krippendorffAlpha.ts';

/** A moment that all reviewers looked at, with each one's verdict, in the order of the reviews. */
export type SharedMoment = CriterionOnRep & { readonly verdicts: readonly Verdict[] };

export type GroupFigures = {
  /** Moments that all reviewers looked at. */
  readonly moments: number;
  /** Share of them to which all gave the same severity, 0-1. */
  readonly unanimous: number | null;
  /** Mean share of pairs of reviewers who gave a moment the same severity, 0-1. */
  readonly pairsAgree: number | null;
  /** Fleiss' kappa, and how many standard errors it is above chance. */
  readonly fleiss: { readonly value: number; readonly z: number } | null;
  /** Krippendorff's alpha, over all moments that two or more looked at. */
  readonly ordinalAlpha: number | null;
  /** The same of the rep scores. */
  readonly intervalAlpha: number | null;
  /** Of the rep scores. */
  readonly intraclass: IntraclassCorrelation;
};

/** Two of the reviewers, by their index among the reviews. */
export type PairFigures = {
  readonly first: number;
  readonly second: number;
  /** Moments that both looked at. */
  readonly moments: number;
  readonly percent: number | null;
  readonly kappa: Estimate | null;
};

export type GroupAgreement = {
  readonly overall: GroupFigures;
  readonly perCriterion: readonly { readonly criterion: CriterionId; readonly figures: GroupFigures }[];
  /** How often each reviewer gave a severity, and Fleiss' kappa of that severity against all others. */
  readonly perSeverity: readonly {
    readonly severity: Severity;
    readonly given: readonly number[];
    readonly kappa: number | null;
  }[];
  readonly pairs: readonly PairFigures[];
  /** Shared moments judged differently, largest spread of scores first. */
  readonly differences: readonly SharedMoment[];
  /** Moments that some looked at and others did not. */
  readonly notShared: number;
  /** Reps that some marked, and others of the same clip did not. */
  readonly unpairedReps: readonly UnpairedRep[];
};

/**
 * How far three or more reviews of the same clips agree. Moments are paired by entry, clip, time of the
 * rep and criterion.
 * @param reviews all under the catalogue's rubric, entries and clips named alike (`alignReviews`)
 */
export function compareReviewers(reviews: readonly Review[], catalogue: Catalogue): GroupAgreement {
  const { moments, unpairedReps } = judgedTogether(reviews, catalogue);
  const shared = moments.flatMap(sharedOnly);
  const criteria = [...new Set(moments.map(({ criterion }) => criterion))];
  return {
    overall: figuresOf(moments),
    perCriterion: criteria.map((criterion) => ({
      criterion,
      figures: figuresOf(moments.filter((moment) => moment.criterion === criterion)),
    })),
    perSeverity: severityFigures(shared, reviews.length),
    pairs: pairFigures(moments, reviews.length),
    differences: shared
      .filter(({ verdicts }) => new Set(verdicts.map(({ severity }) => severity)).size > 1)
      .sort((one, other) => spread(other) - spread(one)),
    notShared: moments.length - shared.length,
    unpairedReps,
  };
}

function sharedOnly({ verdicts, numbers: _, ...moment }: Moment): readonly SharedMoment[] {
  const given = verdicts.filter((verdict) => verdict !== null);
  return given.length === verdicts.length ? [{ ...moment, verdicts: given }] : [];
}

function figuresOf(moments: readonly Moment[]): GroupFigures {
  const shared = moments.flatMap(sharedOnly);
  const counts = shared.map(countsOf);
  const kappa = fleissKappa(counts);
  const reviewers = moments[0]?.verdicts ?? [];
  const ratings = (of: (verdict: Verdict) => number) =>
    reviewers.map((_, index) =>
      moments.map(({ verdicts }) => {
        const verdict = verdicts[index];
        return verdict ? of(verdict) : null;
      }),
    );
  return {
    moments: shared.length,
    unanimous: mean(counts.map((row) => Number(row.includes(reviewers.length)))),
    pairsAgree: mean(counts.map(agreeingPairs)),
    fleiss: kappa && { value: kappa.value, z: kappa.z },
    ordinalAlpha: krippendorffAlpha(
      ratings(({ severity }) => severities.indexOf(severity)),
      'ordinal',
    ),
    intervalAlpha: krippendorffAlpha(
      ratings(({ score }) => score),
      'interval',
    ),
    intraclass: intraclassCorrelation(shared.map(({ verdicts }) => verdicts.map(({ score }) => score))),
  };
}

/** How many reviewers gave each severity. */
const countsOf = ({ verdicts }: SharedMoment): number[] =>
  severities.map((severity) => verdicts.filter((verdict) => verdict.severity === severity).length);

function agreeingPairs(counts: readonly number[]): number {
  const raters = counts.reduce((sum, count) => sum + count, 0);
  return counts.reduce((sum, count) => sum + count * (count - 1), 0) / (raters * (raters - 1));
}

function severityFigures(shared: readonly SharedMoment[], reviewers: number): GroupAgreement['perSeverity'] {
  const perCategory = fleissKappa(shared.map(countsOf))?.perCategory;
  return severities.map((severity, category) => {
    const given = Array.from(
      { length: reviewers },
      (_, index) => shared.filter(({ verdicts }) => verdicts[index]?.severity === severity).length,
    );
    const isUsed = given.some((times) => times > 0);
    return { severity, given, kappa: isUsed ? (perCategory?.[category] ?? null) : null };
  });
}

function pairFigures(moments: readonly Moment[], reviewers: number): readonly PairFigures[] {
  const indexes = Array.from({ length: reviewers }, (_, index) => index);
  return indexes.flatMap((first) =>
    indexes.slice(first + 1).map((second) => {
      const pairs = moments.flatMap(({ verdicts }) => {
        const [one, other] = [verdicts[first], verdicts[second]];
        return one && other ? [[severities.indexOf(one.severity), severities.indexOf(other.severity)] as const] : [];
      });
      const table = countPairs(pairs, severities.length);
      return { first, second, moments: pairs.length, percent: percentAgreement(table), kappa: cohenKappa(table) };
    }),
  );
}

function spread({ verdicts }: SharedMoment): number {
  const scores = verdicts.map(({ score }) => score);
  return Math.max(...scores) - Math.min(...scores);
}

const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
