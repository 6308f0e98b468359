import { isAssisted, isBodyWeight } from '../exercises/bodyWeight.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { parseTempo } from '../time/tempo.ts';
import { loadAtPlaceKg, type Plan, type PlannedSet, runsOfSets } from './plan.ts';
import type { Clip, Entry } from './review.ts';

/** What a set is done with: body weight, body weight and more, a machine's help against it, or a load. */
export type SetLoad =
  | { readonly kind: 'bodyWeight' }
  | { readonly kind: 'added' | 'help' | 'held'; readonly kg: number };

/** Neighbouring sets that are alike; null where repetitions or load are not known, and for reps where one hold is the set. */
export type AlikeSets = {
  readonly count: number;
  readonly reps: number | null;
  /** How long each rep of a hold is to last, in seconds; null for other lifts and where it is not stated. */
  readonly holdS: number | null;
  readonly load: SetLoad | null;
};

/** What has to be known of an exercise to say its work. */
type Worked = Pick<Exercise, 'implement'> & Partial<Pick<Exercise, 'beginsWith'>>;

/**
 * What is known of how many of the sets were done. `all`: every one. `planned`: nothing beyond the plan. `plannedDone`: as many
 * as stated. `plannedFilmed`: as many as filmed at the least. `doneFilmed`: all were done without a plan, and so many filmed.
 */
export type SetCounts =
  | { readonly kind: 'all' | 'planned' }
  | { readonly kind: 'plannedDone' | 'plannedFilmed' | 'doneFilmed'; readonly count: number };

/** The work on an exercise, set by set: as planned, else as its clips show it. */
export type Work = {
  readonly sets: number;
  readonly counts: SetCounts;
  readonly runs: readonly AlikeSets[];
  /** Loads of clips that the plan doesn't name, each once. */
  readonly otherLoads: readonly SetLoad[];
};

/** The work of an entry; null where nothing is known of it: no plan, no clip, no number of sets. */
export function workOf(entry: Entry, exercise: Worked | undefined): Work | null {
  const loadOf = (kg: number | undefined): SetLoad | null => setLoad(kg, exercise);
  const { plan, setsDone, clips } = entry;
  if (plan !== undefined) {
    const planned = new Set(plan.sets.map(({ loadKg }) => loadKg));
    return {
      sets: plan.sets.length,
      counts: countsOfPlan(plan, setsDone, clips.length),
      runs: runsOfSets(plan).map(({ count, set }) => ({ count, ...repsOf(set, exercise), load: loadOf(set.loadKg) })),
      otherLoads: [...new Set(clips.flatMap(({ loadKg }) => loadKg ?? []))]
        .filter((kg) => !planned.has(kg))
        .flatMap((kg) => loadOf(kg) ?? []),
    };
  }
  if (setsDone === undefined && clips.length === 0) return null;
  return {
    sets: setsDone ?? clips.length,
    counts:
      setsDone === undefined || setsDone === clips.length || clips.length === 0
        ? { kind: 'all' }
        : { kind: 'doneFilmed', count: clips.length },
    runs: runsOfClips(clips).map(({ count, set }) => ({
      count,
      ...repsOf(set, exercise),
      load: loadOf(set.loadKg),
    })),
    otherLoads: [],
  };
}

/** The repetitions of a set; of a hold its time, and how many only where a set has several. */
function repsOf({ reps, tempo }: PlannedSet, exercise: Worked | undefined): Pick<AlikeSets, 'reps' | 'holdS'> {
  if (exercise?.beginsWith !== 'hold') return { reps: reps === 0 ? null : reps, holdS: null };
  const { pauseStretchedS = 0, pauseShortenedS = 0 } = (tempo !== undefined && parseTempo(tempo)) || {};
  const heldS = Math.max(pauseStretchedS, pauseShortenedS);
  return { reps: reps > 1 ? reps : null, holdS: heldS > 0 ? heldS : null };
}

function countsOfPlan({ sets }: Plan, done: number | undefined, filmed: number): SetCounts {
  if ((done ?? filmed) === sets.length) return { kind: 'all' };
  if (done !== undefined) return { kind: 'plannedDone', count: done };
  return filmed === 0 ? { kind: 'planned' } : { kind: 'plannedFilmed', count: filmed };
}

/** Clips as sets; one without marked reps has none. */
const runsOfClips = (clips: readonly Clip[]): { readonly count: number; readonly set: PlannedSet }[] =>
  runsOfSets({
    sets: clips.map(({ reps, loadKg }) => ({ reps: reps.length, ...(loadKg !== undefined && { loadKg }) })),
  });

/** The load of a clip in kilograms: its own, else that of the planned set it shows; undefined where that is not known. */
export function clipLoadKg({ plan, clips }: Entry, clip: Clip): number | undefined {
  const place = { index: clips.findIndex(({ id }) => id === clip.id), of: clips.length };
  return clip.loadKg ?? (plan && loadAtPlaceKg(plan, place));
}

/** What a load in kilograms means for an exercise: where the lifter is the load, it is what is added or taken off. */
export function setLoad(kg: number | undefined, exercise: Pick<Exercise, 'implement'> | undefined): SetLoad | null {
  const isOwnWeight = exercise !== undefined && isBodyWeight(exercise);
  if (kg === undefined) return isOwnWeight ? { kind: 'bodyWeight' } : null;
  if (kg === 0) return { kind: 'bodyWeight' };
  if (exercise !== undefined && isAssisted(exercise)) return { kind: 'help', kg };
  return { kind: isOwnWeight ? 'added' : 'held', kg };
}
