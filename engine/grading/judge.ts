import type { Catalogue } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { asOneCamera, setsOf } from '../review/camerasOfSet.ts';
import { isJudging, type JudgingFlag } from '../review/parts.ts';
import type { Clip, Entry, Flag, Tick } from '../review/review.ts';
import { type CriterionId, type Rubric, type Severity, withoutNoise } from '../rubric/rubric.ts';
import {
  type CountedCriterion,
  type ExerciseScore,
  exerciseScore,
  nothingIgnored,
  type Stop,
  scoreUnit,
} from './arithmetic.ts';
import type { CriterionScore, RepScore } from './grade.ts';
import { type FlaggedUnit, flagUnits, tickedUnits, type Unit, unitsOf } from './units.ts';

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
  /** Units that can be judged and were not looked at. */
  readonly unseen: number;
  readonly units: readonly FlaggedUnit[];
  /** What each unit earns; null where it was not looked at. */
  readonly earned: readonly (RepScore | null)[];
  readonly scored: CriterionScore;
};

/** An entry's flags that judge, and its ticks, by criterion: those on clips that it holds. */
type Marks = {
  /** Each set with the cameras that show it. */
  readonly sets: ReturnType<typeof setsOf>;
  readonly units: readonly Unit[];
  readonly flags: ReadonlyMap<CriterionId, JudgingFlag[]>;
  readonly ticks: ReadonlyMap<CriterionId, Tick[]>;
};

function marksOf(entry: Entry, sets: Marks['sets']): Marks {
  const clips = new Set(entry.clips.map((clip) => clip.id));
  const onClips = <T extends JudgingFlag | Tick>(marks: readonly T[]) =>
    Map.groupBy(
      marks.filter(({ clip }) => clips.has(clip)),
      ({ criterion }) => criterion,
    );
  return { sets, units: unitsOf(entry), flags: onClips(entry.flags.filter(isJudging)), ticks: onClips(entry.ticks) };
}

/** Whether the view of a clip can judge a criterion; one that is not known can judge all. */
const canJudge = ({ view }: Clip, exercise: Exercise, criterion: CriterionId): boolean =>
  view === null || exercise.judgedFrom[view]?.includes(criterion) === true;

/**
 * One criterion of an entry. By the rubric, a unit is looked at when it has a flag (praise included) or a tick itself, or
 * when any unit of the criterion has.
 */
function judgeCriterion(
  { criterion, share }: { readonly criterion: CriterionId; readonly share: number },
  { sets, units: all, flags, ticks }: Marks,
  exercise: Exercise,
  rubric: Rubric,
): JudgedCriterion {
  const units = flagUnits(all, flags.get(criterion) ?? []);
  const ticked = tickedUnits(all, ticks.get(criterion) ?? []);
  const touched = flags.has(criterion) || ticks.has(criterion);
  const isSeen = ({ flags: own, unit }: FlaggedUnit): boolean =>
    rubric.lookedAt === 'cell' ? own.length > 0 || ticked.has(unit) : touched;
  const earned = units.map((unit) => (isSeen(unit) ? scoreUnit(unit, rubric, nothingIgnored) : null));
  const reps = earned.filter((one) => one !== null);
  const shownBy = sets
    .filter(({ lead, others }) => [lead, ...others].some((clip) => canJudge(clip, exercise, criterion)))
    .map(({ lead }) => lead.id);
  const shown = new Set(shownBy);
  const unseen = earned.filter((one, index) => one === null && shown.has(units[index]?.unit.clip ?? '')).length;
  const scored = {
    ...{ criterion, share, shownBy, reps },
    applicable: touched || shownBy.length > 0,
    lookedAt: reps.length > 0,
    cells: { lookedAt: reps.length, applicable: reps.length + unseen },
    score: meanOf(reps, 0, 0),
  };
  return { criterion, share, unseen, units, earned, scored };
}

/** The plain mean of units' scores and of some more units at an assumed one; null of nothing at all. */
function meanOf(reps: readonly RepScore[], more: number, assumed: number): number | null {
  const count = reps.length + more;
  if (count === 0) return null;
  return withoutNoise(reps.reduce((sum, { score }) => sum + score, more * assumed) / count);
}

/**
 * Lays flags and ticks on an entry's reps. A rep of a criterion is applicable when the view of its clip can judge it, or
 * somebody did; cameras that show one set judge its reps together. Coverage = share looked at / share applicable, counted rep by rep or by whole criteria as the rubric
 * says; 0 when nothing is applicable.
 */
export function judgeEntry(filmed: Entry, exercise: Exercise, { rubric }: Catalogue): JudgedEntry {
  const entry = asOneCamera(filmed);
  const marks = marksOf(entry, setsOf(filmed.clips));
  const criteria = exercise.criteria.map(({ id, share }) =>
    judgeCriterion({ criterion: id, share }, marks, exercise, rubric),
  );
  return { entry, rubric, criteria, coverage: coverageOf(criteria, rubric), stops: stopsIn(entry) };
}

function coverageOf(criteria: readonly JudgedCriterion[], rubric: Rubric): number {
  const byCell = rubric.lookedAt === 'cell';
  const shareOf = (which: 'applicable' | 'lookedAt') =>
    criteria.reduce(
      (sum, { share, scored }) => sum + share * (byCell ? scored.cells[which] : Number(scored[which])),
      0,
    );
  const applicable = shareOf('applicable');
  return applicable === 0 ? 0 : withoutNoise(shareOf('lookedAt') / applicable);
}

/** How many stop flags stand in an entry. */
export const stopsIn = (entry: Entry): number => entry.flags.filter((flag) => flag.severity === 'stop').length;

/** Flags left out of a score: flags of one criterion and one severity, and the units they touch. */
export type LeftAside = {
  readonly criterion: CriterionId;
  readonly severity: Severity;
  readonly flags: ReadonlySet<Flag>;
  /** Indexes of the touched units among the criterion's units. */
  readonly touched: ReadonlySet<number>;
};

/** Whether any of some stop flags still stands when groups are left aside. */
export function stopWithout(stops: number, aside: readonly LeftAside[]): Stop {
  const gone = aside.reduce((sum, { severity, flags }) => (severity === 'stop' ? sum + flags.size : sum), 0);
  return stops > gone ? 'stop' : 'no stop';
}

/** What the looked-at units earn without some groups of the criterion; they still count as looked at. */
function earnedWithout({ units, earned }: JudgedCriterion, rubric: Rubric, aside: readonly LeftAside[]): RepScore[] {
  const ignored = new Set(aside.flatMap(({ flags }) => [...flags]));
  return earned.flatMap((rep, index) => {
    const unit = units[index];
    if (rep === null || unit === undefined) return [];
    return [aside.some(({ touched }) => touched.has(index)) ? scoreUnit(unit, rubric, ignored) : rep];
  });
}

/** How reps that nobody looked at count: left out, or at an assumed score where they can be judged. */
export type Unseen = 'left out' | number;

/** The entry's score, groups of flags left aside, unseen reps left out or assumed; null when nothing counts. */
export function scoreEntry(
  judged: JudgedEntry,
  unseen: Unseen,
  aside: readonly LeftAside[] = [],
): ExerciseScore | null {
  const { rubric } = judged;
  const counted: CountedCriterion[] = [];
  for (const one of judged.criteria) {
    const { criterion, share, scored } = one;
    const own = aside.filter((group) => group.criterion === criterion);
    const reps = own.length === 0 ? scored.reps : earnedWithout(one, rubric, own);
    const score = unseen === 'left out' ? meanOf(reps, 0, 0) : meanOf(reps, one.unseen, unseen);
    if (score !== null) counted.push({ criterion, share, score });
  }
  return exerciseScore(counted, rubric, stopWithout(judged.stops, aside));
}
