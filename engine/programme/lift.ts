import { isBodyWeight } from '../exercises/bodyWeight.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import { findExercise } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { setsDone } from '../review/parts.ts';
import type { PlannedSet } from '../review/plan.ts';
import type { Entry, Review } from '../review/review.ts';
import { hardSets } from './hardSets.ts';

/** An entry as the programme sees it: its exercise, its planned sets, and those of them that are hard. */
export type Lift = {
  readonly entry: Entry;
  readonly exercise: Exercise;
  /** Empty where nothing is planned. */
  readonly sets: readonly PlannedSet[];
  readonly hard: readonly PlannedSet[];
  /** How many hard sets; where nothing is planned, the sets done. */
  readonly hardCount: number;
};

/** The lifts whose exercise the library holds, in the order of the session. */
export function liftsOf(review: Review, catalogue: Catalogue): Lift[] {
  return review.entries.flatMap((entry) => {
    const exercise = findExercise(catalogue, entry.exercise);
    if (exercise === undefined) return [];
    const sets = entry.plan?.sets ?? [];
    const hard = hardSets(sets, exercise);
    return [{ entry, exercise, sets, hard, hardCount: sets.length === 0 ? setsDone(entry) : hard.length }];
  });
}

/** Moved by the lifter's weight alone: no load is planned on top. */
export const isUnloaded = ({ exercise, sets }: Pick<Lift, 'exercise' | 'sets'>): boolean =>
  isBodyWeight(exercise) && sets.every(({ loadKg = 0 }) => loadKg === 0);

/** A lift without load that is hardest where the muscles are short, and that others do better: a way to warm up. */
export const isPreparation = (lift: Lift): boolean =>
  isUnloaded(lift) && lift.exercise.hardestAt === 'shortened' && lift.exercise.ladder.betterSuited.length > 0;

/** Fewest repetitions of some sets; infinite for none. */
export const fewestReps = (sets: readonly PlannedSet[]): number => Math.min(...sets.map(({ reps }) => reps));

/** Most repetitions of some sets; 0 for none. */
export const mostReps = (sets: readonly PlannedSet[]): number => Math.max(0, ...sets.map(({ reps }) => reps));

/** The names of some lifts' exercises, each once, in order. */
export const namesOf = (lifts: readonly Pick<Lift, 'exercise'>[]): string[] => [
  ...new Set(lifts.map(({ exercise }) => exercise.name)),
];

export const idsOf = (lifts: readonly Pick<Lift, 'entry'>[]): string[] => lifts.map(({ entry }) => entry.id);
