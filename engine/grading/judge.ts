import type { Catalogue } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import type { Entry, Flag } from '../review/review.ts';
import { type CriterionId, type Rubric, type Weight, withoutNoise } from '../rubric/rubric.ts';
import {
  type CountedCriterion,
  type ExerciseScore,
  exerciseScore,
  meanOfUnits,
  nothingIgnored,
  type Stop,
  scoreUnit,
} from './arithmetic.ts';
import type { CriterionScore } from './grade.ts';
import { type FlaggedUnit, flagUnits, unitsOf } from './units.ts';

/** An entry with its flags laid on its reps: what every figure of its grade is computed from. */
export type JudgedEntry = {
  readonly entry: Entry;
  readonly rubric: Rubric;
  readonly criteria: readonly JudgedCriterion[];
  readonly coverage: number;
  /** How many stop flags stand in it. */
  readonly stops: number;
};
export type JudgedCriterion = {
  readonly criterion: CriterionId;
  readonly share: number;
  readonly applicable: boolean;
  readonly lookedAt: boolean;
  readonly units: readonly FlaggedUnit[];
  readonly scored: CriterionScore;
};

const viewsCanJudge = (entry: Entry, exercise: Exercise, criterion: CriterionId): boolean =>
  entry.clips.some(({ view }) => view === null || exercise.judgedFrom[view]?.includes(criterion) === true);

/**
 * Lays flags and ticks on an entry's reps. A criterion is looked at when it has a flag (praise included) or a tick
 * anywhere in the entry; it is applicable when the view of some clip can judge it (an unknown view can judge
 * all), or somebody did judge it. Coverage = share looked at / share applicable, 0 when nothing is applicable.
 */
export function judgeEntry(entry: Entry, exercise: Exercise, catalogue: Catalogue): JudgedEntry {
  const clips = new Set(entry.clips.map((clip) => clip.id));
  const touched = new Set(
    [...entry.flags, ...entry.ticks].filter(({ clip }) => clips.has(clip)).map(({ criterion }) => criterion),
  );
  const units = unitsOf(entry);
  const flags = Map.groupBy(entry.flags, (flag) => flag.criterion);
  const criteria = exercise.criteria.map(({ id, share }): JudgedCriterion => {
    const judged = {
      criterion: id,
      share,
      applicable: touched.has(id) || viewsCanJudge(entry, exercise, id),
      lookedAt: touched.has(id),
      units: flagUnits(units, flags.get(id) ?? []),
    };
    return { ...judged, scored: scoreCriterion(judged, catalogue.rubric) };
  });
  const shareOf = (which: 'applicable' | 'lookedAt') =>
    criteria.reduce((sum, one) => (one[which] ? sum + one.share : sum), 0);
  const applicable = shareOf('applicable');
  const coverage = applicable === 0 ? 0 : withoutNoise(shareOf('lookedAt') / applicable);
  return { entry, rubric: catalogue.rubric, criteria, coverage, stops: stopsIn(entry) };
}

/** How many stop flags stand in an entry. */
export const stopsIn = (entry: Entry): number => entry.flags.filter((flag) => flag.weight === 'stop').length;

/** Flags left out of a score: flags of one criterion and one weight, and the units they touch. */
export type LeftAside = {
  readonly criterion: CriterionId;
  readonly weight: Weight;
  readonly flags: ReadonlySet<Flag>;
  /** Indexes of the touched units among the criterion's units. */
  readonly touched: ReadonlySet<number>;
};

/** Whether any of some stop flags still stands when a group is left aside. */
export function stopWithout(stops: number, aside: LeftAside | null): Stop {
  const left = aside?.weight === 'stop' ? stops - aside.flags.size : stops;
  return left > 0 ? 'stop' : 'no stop';
}

/** One criterion as the grade's tree shows it. */
function scoreCriterion(judged: Omit<JudgedCriterion, 'scored'>, rubric: Rubric): CriterionScore {
  const { criterion, share, applicable, lookedAt, units } = judged;
  const reps = lookedAt ? units.map((unit) => scoreUnit(unit, rubric, nothingIgnored)) : [];
  const score = reps.length === 0 ? null : withoutNoise(meanOfUnits(reps));
  return { criterion, share, applicable, lookedAt, score, reps };
}

/** The criterion's score without a group: only the units that the group touches are scored again. */
function scoreWithout({ units, scored }: JudgedCriterion, rubric: Rubric, aside: LeftAside): number {
  const reps = scored.reps.map((rep, index) => {
    const unit = units[index];
    return unit !== undefined && aside.touched.has(index) ? scoreUnit(unit, rubric, aside.flags) : rep;
  });
  return withoutNoise(meanOfUnits(reps));
}

/** How a criterion that nobody looked at counts: left out, or at an assumed score. */
export type Unseen = 'left out' | number;

/** The entry's score, a group of flags left aside, unseen criteria left out or assumed; null when nothing counts. */
export function scoreEntry(judged: JudgedEntry, unseen: Unseen, aside: LeftAside | null = null): ExerciseScore | null {
  const { rubric } = judged;
  const counted: CountedCriterion[] = [];
  for (const one of judged.criteria) {
    const { criterion, share, scored } = one;
    const seen =
      scored.score !== null && aside?.criterion === criterion ? scoreWithout(one, rubric, aside) : scored.score;
    if (seen !== null) counted.push({ criterion, share, score: seen });
    else if (unseen !== 'left out' && one.applicable) counted.push({ criterion, share, score: unseen });
  }
  return exerciseScore(counted, rubric, stopWithout(judged.stops, aside));
}
