import { isAssisted, isBodyWeight } from '../exercises/bodyWeight.ts';
import type { Exercise } from '../exercises/exercise.ts';
import type { PlannedSet } from '../review/plan.ts';

/** A set counts as hard with this many repetitions in reserve or fewer (common practice, no source). */
export const hardUpToInReserve = 3;

/** A lighter set before the heaviest is a warm-up when it could have gone on for more than this. */
const warmUpFromInReserve = 5;

/**
 * The hard sets of a lift, in order: those that say so by their repetitions in reserve. One that says nothing is hard,
 * unless a heavier set after it shows that it is a warm-up.
 */
export function hardSets(sets: readonly PlannedSet[], exercise: Pick<Exercise, 'implement'>): PlannedSet[] {
  return sets.filter((set, at) =>
    set.repsInReserve === undefined
      ? !sets.slice(at + 1).some((later) => isWarmUpFor(set, later, exercise))
      : set.repsInReserve <= hardUpToInReserve,
  );
}

/**
 * Whether a set without stated effort is a warm-up for a heavier one after it. Where the lifter's own weight is part of
 * the load, only one without more repetitions is; else its repetitions in reserve are estimated from the heavier set
 * (Epley 1985, from memory: the load for one repetition is load × (1 + repetitions / 30)).
 */
function isWarmUpFor(set: PlannedSet, later: PlannedSet, exercise: Pick<Exercise, 'implement'>): boolean {
  if (isAssisted(exercise)) return false;
  if (set.loadKg === undefined || later.loadKg === undefined || set.loadKg >= later.loadKg) return false;
  if (isBodyWeight(exercise)) return set.reps <= later.reps;
  const oneRepMaxKg = later.loadKg * (1 + (later.reps + (later.repsInReserve ?? 0)) / 30);
  const possible = 30 * (oneRepMaxKg / set.loadKg - 1);
  return possible - set.reps > warmUpFromInReserve;
}
