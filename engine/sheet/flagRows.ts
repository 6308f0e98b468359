import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { Exercise, Fault } from '../exercises/exercise.ts';
import type { Entry, Flag, Review } from '../review/review.ts';
import type { Criterion, CriterionId, Severity } from '../rubric/rubric.ts';
import { momentUs } from '../time/moment.ts';

/** One flag with everything a reader needs beside it: names in place of ids, its time, its fault's words. */
export type FlagRow = {
  readonly flagId: string;
  readonly entryId: string;
  /** Name of the exercise; its id where the library has no such exercise. */
  readonly exercise: string;
  readonly clip: string;
  readonly clipName: string;
  /** Reps the flag speaks of, rising; null = the whole set. */
  readonly reps: readonly number[] | null;
  /** Media time in microseconds; null where only a frame is known and the clip's time base is not. */
  readonly us: number | null;
  readonly frame: number | null;
  readonly criterion: CriterionId;
  readonly criterionName: string;
  /** null = a plain note. */
  readonly severity: Severity | null;
  /** The fault as the flag names it, whether or not the library knows it. */
  readonly faultId: string | null;
  readonly fault: Fault | null;
  /** What was seen, as a clause; '' for praise, plain notes and remarks without a named fault. */
  readonly seen: string;
  readonly note: string;
  readonly cue: string;
};

/** A flag that judges, with everything beside it. */
export type JudgingRow = FlagRow & { readonly severity: Severity };

/** The name of an exercise as the library has it; its id where the library has none. */
export const exerciseName = (catalogue: Catalogue, id: string): string => findExercise(catalogue, id)?.name ?? id;

/**
 * The name of a criterion as the rubric has it, on an exercise where one is given: the depth of a squat is the range of a
 * press. Its id where the rubric has none.
 */
export function criterionName(catalogue: Catalogue, id: CriterionId, exerciseId?: string): string {
  const criterion = catalogue.rubric.criteria.find((one) => one.id === id);
  if (criterion === undefined) return id;
  const exercise = exerciseId === undefined ? undefined : findExercise(catalogue, exerciseId);
  return exercise === undefined ? criterion.name : nameOn(exercise, criterion);
}

function nameOn({ pattern, implement }: Exercise, { name, elsewhere }: Criterion): string {
  if (elsewhere === undefined) return name;
  const { patterns, implements: bars } = elsewhere.unless;
  return patterns.includes(pattern) || bars.includes(implement) ? name : elsewhere.name;
}

function rowOf(flag: Flag, entry: Entry, exercise: Exercise | undefined, catalogue: Catalogue): FlagRow {
  const clip = entry.clips.find((each) => each.id === flag.clip);
  const fault = exercise?.faults.find((each) => each.id === flag.fault) ?? null;
  return {
    flagId: flag.id,
    entryId: entry.id,
    exercise: exercise?.name ?? entry.exercise,
    clip: flag.clip,
    clipName: clip?.name ?? flag.clip,
    reps: flag.reps === 'set' ? null : [...new Set(flag.reps)].sort((a, b) => a - b),
    us: momentUs(flag.at, clip?.facts),
    frame: 'frame' in flag.at ? flag.at.frame : null,
    criterion: flag.criterion,
    criterionName: criterionName(catalogue, flag.criterion, entry.exercise),
    severity: flag.severity,
    faultId: flag.fault,
    fault,
    seen: fault?.seen ?? '',
    note: flag.note,
    cue: flag.cue === '' && flag.severity !== 'keep' ? (fault?.cue.outcome ?? '') : flag.cue,
  };
}

/** All flags in the order of entries and clips, and by time within a clip. */
export function flagRows(review: Review, catalogue: Catalogue): FlagRow[] {
  return review.entries.flatMap((entry) => {
    const exercise = findExercise(catalogue, entry.exercise);
    const indexOf = new Map(entry.clips.map((clip, index) => [clip.id, index]));
    const rows = entry.flags.map((flag) => rowOf(flag, entry, exercise, catalogue));
    // A frame is as good as a time to order by within one clip, and the flag's id settles what is left.
    return rows.sort(
      (a, b) =>
        (indexOf.get(a.clip) ?? indexOf.size) - (indexOf.get(b.clip) ?? indexOf.size) ||
        (a.us ?? 0) - (b.us ?? 0) ||
        (a.frame ?? 0) - (b.frame ?? 0) ||
        (a.flagId < b.flagId ? -1 : 1),
    );
  });
}
