import type { Flag } from '../review/review.ts';
import { type CriterionId, type Rubric, withoutNoise } from '../rubric/rubric.ts';
import { exerciseRule } from '../rubric/rules.ts';
import type { FlagCost, RepScore, ScoreLoss } from './grade.ts';
import type { FlaggedUnit } from './units.ts';

/** A criterion that counts: its share of the exercise and its score from 0 to 100. */
export type CountedCriterion = { readonly criterion: CriterionId; readonly share: number; readonly score: number };

export type ExerciseScore = {
  readonly score: number;
  readonly weightedMean: number;
  readonly lowest: { readonly criterion: CriterionId; readonly score: number };
  readonly lost: ScoreLoss;
  /** The cap of a stop flag is what decides the score. */
  readonly capped: boolean;
};

/** Whether a stop flag stands, which caps a score. */
export type Stop = 'stop' | 'no stop';

/** Weighted mean; with no weight at all, the plain mean. */
export function weightedMean(parts: readonly { readonly weight: number; readonly score: number }[]): number {
  const total = parts.reduce((sum, { weight }) => sum + weight, 0);
  if (total === 0) return parts.reduce((sum, { score }) => sum + score, 0) / parts.length;
  return parts.reduce((sum, { weight, score }) => sum + weight * score, 0) / total;
}

/** Holds a score at the cap where a stop flag stands. */
export const cap = (score: number, most: number, stop: Stop): number =>
  stop === 'stop' ? Math.min(score, most) : score;

const within0To100 = (score: number): number => Math.min(100, Math.max(0, score));

/** The lowest first; equal scores stay in the order of the exercise's criteria. */
const fromLowest = (counted: readonly CountedCriterion[]): CountedCriterion[] =>
  counted.toSorted((a, b) => a.score - b.score);

/**
 * Score of an exercise from its counted criteria, by the rubric's rule: 100 less a share of what the weighted mean lacks
 * to 100, and shares of what the lowest criteria lack to their lines; held down by the rubric's cap where a stop flag
 * stands. Null when nothing counts.
 */
export function exerciseScore(counted: readonly CountedCriterion[], rubric: Rubric, stop: Stop): ExerciseScore | null {
  const ordered = fromLowest(counted);
  const [lowest] = ordered;
  if (lowest === undefined) return null;
  const rule = exerciseRule(rubric);
  const mean = weightedMean(counted.map(({ share, score }) => ({ weight: share, score })));
  const lows = rule.lowest.flatMap(({ rank, under, share }) => {
    const low = ordered[rank - 1];
    return low === undefined ? [] : [{ rank, under, share, low }];
  });
  const held = lows.reduce((sum, { under, share, low }) => sum + share * Math.min(under, low.score), 0);
  const whole = lows.reduce((sum, { under, share }) => sum + share * under, 100 * rule.meanShare);
  const free = within0To100(withoutNoise(rule.meanShare * mean + held + withoutNoise(100 - whole)));
  const score = cap(free, rubric.stopCap.exercise, stop);
  return {
    score,
    weightedMean: within0To100(withoutNoise(mean)),
    lowest: { criterion: lowest.criterion, score: lowest.score },
    lost: {
      mean: withoutNoise(rule.meanShare * (100 - mean)),
      lowest: [...Map.groupBy(lows, ({ rank }) => rank)].flatMap(([rank, lines]) => {
        const [line] = lines;
        if (line === undefined) return [];
        const { criterion, score: own } = line.low;
        const points = lines.reduce((sum, { under, share }) => sum + share * Math.max(0, under - own), 0);
        return [{ rank, criterion, score: own, points: withoutNoise(points) }];
      }),
    },
    capped: score < free,
  };
}

/** Flags to ignore: their cost is 0. */
export type Ignored = ReadonlySet<Flag>;
export const nothingIgnored: Ignored = new Set();

const byCostThenId = (a: FlagCost, b: FlagCost): number =>
  b.cost - a.cost || (a.flagId < b.flagId ? -1 : a.flagId > b.flagId ? 1 : 0);

/**
 * 100 × the product of (1 − cost) over a unit's flags. Costs are multiplied in one order whatever the
 * order of the flags, so that equal judgements give equal bits.
 */
export function scoreUnit({ unit, flags }: FlaggedUnit, rubric: Rubric, ignored: Ignored): RepScore {
  const costs = flags
    .map((flag) => ({
      flagId: flag.id,
      fault: flag.fault,
      severity: flag.severity,
      cost: ignored.has(flag) ? 0 : rubric.cost[flag.severity],
    }))
    .sort(byCostThenId);
  const kept = costs.reduce((left, { cost }) => left * (1 - cost), 1);
  return { clip: unit.clip, rep: unit.rep, score: withoutNoise(100 * kept), flags: costs };
}
