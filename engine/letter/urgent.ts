import { type Catalogue, findExercise, untranslated } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { loadedAreas } from '../pain/loadedAreas.ts';
import type { Entry, Review } from '../review/review.ts';
import { severities } from '../rubric/rubric.ts';
import type { JudgingRow } from '../sheet/flagRows.ts';
import { unitsOpened, unitsTouched } from './sightings.ts';

/** Faults that are judged with the spine but are of another part of the body. */
const ofOtherParts = /^(?:shoulder|wrist|elbow|knee|breath|head|blade|leg|ankle|heel|free|stops|stance|slack|glutes)/;

/** Repetitions in reserve up to which a set is near its limit, and reps a set up to which it is heavy (common practice). */
const fewInReserve = 2;
const fewReps = 6;

const loadsOf = ({ plan, clips }: Entry): number[] => [
  ...(plan?.sets ?? []).flatMap(({ loadKg }) => loadKg ?? []),
  ...clips.flatMap(({ loadKg }) => loadKg ?? []),
];

const heaviestOf = (entry: Entry): number => Math.max(0, ...loadsOf(entry));

/** Whether there is load to take off: a load is stated, or none is and the lift is not one of body weight. */
function hasLoad(entry: Entry, exercise: Exercise): boolean {
  const loads = loadsOf(entry);
  return loads.length > 0 ? Math.max(...loads) > 0 : !exercise.implement.startsWith('body weight');
}

/**
 * Whether an entry is lifted near the plan's limit: few reps in reserve, few reps a set, or the heaviest load of the
 * session. Without a plan that says otherwise, it is.
 */
export function isNearLimit(entry: Entry, review: Review): boolean {
  const sets = entry.plan?.sets ?? [];
  const inReserve = sets.flatMap(({ repsInReserve }) => repsInReserve ?? []);
  if (inReserve.length === 0 || Math.min(...inReserve) <= fewInReserve) return true;
  if (sets.some(({ reps }) => reps <= fewReps)) return true;
  const others = review.entries.filter(({ exercise }) => exercise !== entry.exercise).map(heaviestOf);
  return others.length > 0 && heaviestOf(entry) > Math.max(...others);
}

/**
 * Whether remarks of one entry are a fault of the spine on most reps of a loaded lift near its limit: what a coach would
 * have put right before anything else. `rows` are of one fault and one entry.
 */
export function isUrgent(rows: readonly JudgingRow[], entry: Entry, review: Review, catalogue: Catalogue): boolean {
  const exercise = findExercise(untranslated(catalogue), entry.exercise);
  if (exercise === undefined) return false;
  const heavy = rows.filter(
    ({ criterion, fault, severity }) =>
      criterion === 'spinePosition' &&
      severities.indexOf(severity) >= severities.indexOf('correct') &&
      !ofOtherParts.test(fault?.id ?? ''),
  );
  return (
    heavy.length > 0 &&
    unitsTouched(heavy, entry) > unitsOpened(entry, 'spinePosition') / 2 &&
    loadedAreas(exercise).has('lowerBack') &&
    hasLoad(entry, exercise) &&
    isNearLimit(entry, review)
  );
}
