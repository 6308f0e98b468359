import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { ProblemError } from '../../contract/reply.ts';
import { oneLine } from '../run/outcome.ts';

/**
 * The exercise with an id that a person typed. Throws `not-found`.
 * @param outcome what did not happen, for the sentence: "nothing was measured"
 */
export function requireExercise(exercises: readonly Exercise[], id: string, outcome: string): Exercise {
  const known = exercises.find((exercise) => exercise.id === id);
  if (known !== undefined) return known;
  const shown = oneLine(id).slice(0, 60);
  throw new ProblemError(
    'not-found',
    `The library has no exercise "${shown}", so ${outcome}; see rackside exercise list.`,
  );
}
