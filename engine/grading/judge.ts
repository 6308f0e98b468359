import type { Catalogue } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { type Speech, speechOf } from '../language/index.ts';
import type { Entry } from '../review/index.ts';
import { type CriterionId, type Rubric, withoutNoise } from '../rubric/index.ts';
import { type CountedCriterion, type ExerciseScore, exerciseScore, type Stop } from './arithmetic.ts';
import { type Ignored, meanOfUnits, nothingIgnored, scoreUnit } from './criterionScore.ts';
import type { CriterionScore } from './grade.ts';
import { type FlaggedUnit, flagUnits } from './units.ts';

/** An entry with its flags laid on its reps: what every figure of its grade is computed from. */
export type JudgedEntry = {
  readonly entry: Entry;
  readonly rubric: Rubric;
  readonly speech: Speech;
  readonly criteria: readonly JudgedCriterion[];
  readonly coverage: number;
};
export type JudgedCriterion = {
  readonly criterion: CriterionId;
  readonly share: number;
  readonly applicable: boolean;
  readonly lookedAt: boolean;
  readonly units: readonly FlaggedUnit[];
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
  const criteria = exercise.criteria.map(({ id, share }) => ({
    criterion: id,
    share,
    applicable: touched.has(id) || viewsCanJudge(entry, exercise, id),
    lookedAt: touched.has(id),
    units: flagUnits(entry, id),
  }));
  const shareOf = (which: 'applicable' | 'lookedAt') =>
    criteria.reduce((sum, one) => (one[which] ? sum + one.share : sum), 0);
  const applicable = shareOf('applicable');
  const coverage = applicable === 0 ? 0 : withoutNoise(shareOf('lookedAt') / applicable);
  return { entry, rubric: catalogue.rubric, speech: speechOf(catalogue), criteria, coverage };
}

/** Whether a stop flag stands in the entry, leaving some flags aside. */
export function stopIn(entry: Entry, ignored: Ignored = nothingIgnored): Stop {
  return entry.flags.some((flag) => flag.weight === 'stop' && !ignored.has(flag)) ? 'stop' : 'no stop';
}

/** One criterion as the grade's tree shows it. */
export function scoreCriterion(judged: JudgedCriterion, rubric: Rubric, ignored: Ignored): CriterionScore {
  const { criterion, share, applicable, lookedAt, units } = judged;
  const reps = lookedAt ? units.map((unit) => scoreUnit(unit, rubric, ignored)) : [];
  const score = reps.length === 0 ? null : withoutNoise(meanOfUnits(reps));
  return { criterion, share, applicable, lookedAt, score, reps };
}

/** What stands in for a criterion nobody looked at: left out, or taken at a score. */
export type Unseen = 'left out' | number;

/** The entry's score, some flags left aside, unseen criteria left out or assumed; null when nothing counts. */
export function scoreEntry(
  judged: JudgedEntry,
  unseen: Unseen,
  ignored: Ignored = nothingIgnored,
): ExerciseScore | null {
  const counted = judged.criteria.flatMap((one): CountedCriterion[] => {
    const { criterion, share } = one;
    const { score } = scoreCriterion(one, judged.rubric, ignored);
    if (score !== null) return [{ criterion, share, score }];
    return unseen === 'left out' || !one.applicable ? [] : [{ criterion, share, score: unseen }];
  });
  return exerciseScore(counted, judged.rubric, stopIn(judged.entry, ignored));
}
