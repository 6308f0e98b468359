import { type Catalogue, type Caution, findExercise } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { readPainNote } from '../pain/painNote.ts';
import type { Entry, Review } from '../review/review.ts';
import type { LetterPlan } from './letterPlan.ts';

/** The cautions that an exercise names, and those of the faults found in it. */
function namedBy(entry: Entry, exercise: Exercise | undefined): string[] {
  if (exercise === undefined) return [];
  const found = new Set(entry.flags.flatMap((flag) => (flag.severity === 'keep' ? [] : (flag.fault ?? []))));
  const hazards = exercise.faults.filter((fault) => found.has(fault.id)).flatMap((fault) => fault.caution ?? []);
  return [...exercise.cautions, ...hazards];
}

function applies(caution: Caution, review: Review, catalogue: Catalogue): boolean {
  switch (caution.applies) {
    case 'always':
      return true;
    case 'minor':
      return review.trainee.minor;
    case 'exercise':
      return review.entries.some((entry) =>
        namedBy(entry, findExercise(catalogue, entry.exercise)).includes(caution.id),
      );
    case 'pain':
      return readPainNote(review.session.painNote).kind === 'pain';
    case 'stop':
      return review.entries.some((entry) => entry.flags.some((flag) => flag.severity === 'stop'));
  }
}

/** The cautions that a session calls for. */
export const cautionsDue = (review: Review, catalogue: Catalogue): Caution[] =>
  catalogue.cautions.filter((caution) => applies(caution, review, catalogue));

/** The cautions that this session calls for, by the part of the letter they belong to. */
export function planCautions(review: Review, catalogue: Catalogue): LetterPlan['cautions'] {
  const due = cautionsDue(review, catalogue);
  return {
    stop: due.filter((caution) => caution.applies === 'stop'),
    pain: due.filter((caution) => caution.applies === 'pain'),
    other: due.filter((caution) => caution.applies !== 'stop' && caution.applies !== 'pain'),
  };
}
