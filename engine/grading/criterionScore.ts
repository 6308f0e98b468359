import type { Flag } from '../review/review.ts';
import { withoutNoise } from '../rubric/mark.ts';
import type { Rubric } from '../rubric/rubric.ts';
import type { FlagCost, RepScore } from './grade.ts';
import type { FlaggedUnit } from './units.ts';

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
      weight: flag.weight,
      cost: ignored.has(flag) ? 0 : rubric.cost[flag.weight],
    }))
    .sort(byCostThenId);
  const kept = costs.reduce((left, { cost }) => left * (1 - cost), 1);
  return { clip: unit.clip, rep: unit.rep, score: withoutNoise(100 * kept), flags: costs };
}

/** The plain mean of the units' scores; the units are never empty. */
export function meanOfUnits(scores: readonly RepScore[]): number {
  return scores.reduce((sum, { score }) => sum + score, 0) / scores.length;
}
