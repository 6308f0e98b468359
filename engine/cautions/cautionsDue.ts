import { type Catalogue, type Caution, findExercise, untranslated } from '../exercises/catalogue.ts';
import { mayBeHomeMade } from '../exercises/equipment.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { readPainNote } from '../pain/painNote.ts';
import { painStep } from '../pain/painRule.ts';
import { equipmentOf } from '../review/parts.ts';
import type { Entry, Review } from '../review/review.ts';
import { asksToHoldBreath } from './breathHeld.ts';
import { heldBack } from './heldBack.ts';

/** The cautions of the faults found in an exercise. */
function ofHazards({ flags }: Entry, exercise: Exercise | undefined): string[] {
  const found = new Set(flags.flatMap(({ severity, fault }) => (severity === 'keep' ? [] : (fault ?? []))));
  return (exercise?.faults ?? []).filter(({ id }) => found.has(id)).flatMap(({ caution }) => caution ?? []);
}

/** Whether an entry calls for a caution that belongs to exercises. */
function isCalledForBy(entry: Entry, { id, applies }: Caution, review: Review, catalogue: Catalogue): boolean {
  const exercise = findExercise(untranslated(catalogue), entry.exercise);
  if (ofHazards(entry, exercise).includes(id)) return true;
  const named = exercise?.cautions.includes(id) ?? false;
  if (applies === 'homeMade') return named && mayBeHomeMade(equipmentOf(review));
  if (applies === 'breath') return named || entry.flags.some((flag) => asksToHoldBreath(flag, exercise));
  return named;
}

/** Whether something unsafe was flagged. */
export const hasStop = ({ entries }: Pick<Review, 'entries'>): boolean =>
  entries.some(({ flags }) => flags.some(({ severity }) => severity === 'stop'));

/**
 * Whether something unsafe was flagged, and the lift may go on with a light load: not while pain holds it back, when it is
 * left out whole.
 */
function mayBeLiftedLight(review: Review, catalogue: Catalogue): boolean {
  const held = heldBack(review, catalogue).entries;
  const stopped = review.entries.filter((entry) => hasStop({ entries: [entry] }));
  return stopped.length > 0 && !stopped.some(({ id }) => held.has(id));
}

function applies(caution: Caution, review: Review, catalogue: Catalogue): boolean {
  const reading = readPainNote(review.session.painNote);
  switch (caution.applies) {
    case 'always':
      return true;
    case 'minor':
      return review.trainee.minor;
    case 'exercise':
    case 'homeMade':
    case 'breath':
      return review.entries.some((entry) => isCalledForBy(entry, caution, review, catalogue));
    case 'pain':
      return reading.kind === 'pain';
    case 'painToSettle':
      return painStep(reading) === 'settle';
    case 'stop':
      return mayBeLiftedLight(review, catalogue);
  }
}

/** The cautions that a session calls for, in the library's order. */
export const cautionsDue = (review: Review, catalogue: Catalogue): readonly Caution[] =>
  catalogue.cautions.filter((caution) => applies(caution, review, catalogue));

/** The cautions that go with some exercises whoever does them, and those that go with everything. */
export function cautionsOfExercises(ids: readonly string[], catalogue: Catalogue): readonly Caution[] {
  const named = new Set(ids.flatMap((id) => findExercise(catalogue, id)?.cautions ?? []));
  return catalogue.cautions.filter(
    ({ id, applies: when }) => when === 'always' || ((when === 'exercise' || when === 'breath') && named.has(id)),
  );
}
