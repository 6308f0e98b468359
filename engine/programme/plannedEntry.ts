import type { Catalogue } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import type { Entry, Plan, Review } from '../review/review.ts';

/** An entry with its exercise, in the order of the session; `plan` undefined when none is known. */
export type PlannedEntry = {
  readonly entry: Entry;
  readonly exercise: Exercise;
  readonly plan: Plan | undefined;
};

/** The entries whose exercise the library holds, in order. */
export function plannedEntries(review: Review, catalogue: Catalogue): PlannedEntry[] {
  return review.entries.flatMap((entry) => {
    const exercise = catalogue.exercises.find((one) => one.id === entry.exercise);
    return exercise === undefined ? [] : [{ entry, exercise, plan: entry.plan }];
  });
}

/** The muscles that both exercises train directly. */
export function sharedMuscles(one: Exercise, other: Exercise): string[] {
  return one.muscles.direct.filter((muscle) => other.muscles.direct.includes(muscle));
}

/** Every pair of a session's entries, the earlier one first. */
export function pairsOf(entries: readonly PlannedEntry[]): (readonly [PlannedEntry, PlannedEntry])[] {
  return entries.flatMap((earlier, i) => entries.slice(i + 1).map((later) => [earlier, later] as const));
}
