import type { Catalogue } from '../exercises/catalogue.ts';
import type { SessionGrade } from '../grading/grade.ts';
import type { Entry, Review } from '../review/review.ts';
import { exerciseName } from '../sheet/flagRows.ts';
import type { EntryLine } from './letterPlan.ts';

/** Reps a set: as planned, else the most that a clip shows; null where neither is known. */
function repsOf(entry: Entry): number | null {
  const marked = Math.max(0, ...entry.clips.map((clip) => clip.reps.length));
  return entry.plan?.reps ?? (marked === 0 ? null : marked);
}

/** Loads of the clips, else the plan's. */
function loadsOf(entry: Entry): number[] {
  const lifted = entry.clips.flatMap((clip) => (clip.loadKg === undefined ? [] : [clip.loadKg]));
  if (lifted.length > 0) return lifted;
  return entry.plan?.loadKg === undefined ? [] : [entry.plan.loadKg];
}

/** A line for each exercise: what was done and how it was graded. */
export function planEntries(review: Review, grade: SessionGrade, catalogue: Catalogue): EntryLine[] {
  return review.entries.flatMap((entry) => {
    const graded = grade.entries.find((each) => each.entryId === entry.id);
    if (graded === undefined) return [];
    return {
      entryId: entry.id,
      exercise: exerciseName(catalogue, entry.exercise),
      sets: graded.setsDone,
      reps: repsOf(entry),
      loadsKg: loadsOf(entry),
      clipNames: entry.clips.map((clip) => clip.name),
      state: graded.state,
      override: graded.override,
      coverage: graded.coverage,
      cappedByStop: graded.cappedByStop,
    };
  });
}
