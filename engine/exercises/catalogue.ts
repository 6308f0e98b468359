import * as v from 'valibot';
import type { Language } from '../language/language.ts';
import type { CriterionId, Rubric } from '../rubric/rubric.ts';
import type { Exercise, Fault } from './exercise.ts';
import type { Translation } from './translation.ts';

/** A caution, printed where it applies. */
export const cautionSchema = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{1,59}$/)),
  topic: v.string(),
  /** Plain sentences, printed as they are. */
  text: v.string(),
  source: v.string(),
  /** When it is printed: always, with a pain note, with a stop flag, for minors, or for exercises that name it. */
  applies: v.picklist(['always', 'pain', 'stop', 'minor', 'exercise']),
});
export type Caution = v.InferOutput<typeof cautionSchema>;

/** The judging data the engine works with: read from seeds by the backend, handed to every function. */
export type Catalogue = {
  readonly rubric: Rubric;
  readonly exercises: readonly Exercise[];
  readonly cautions: readonly Caution[];
  /** The language its texts are in; English without one. */
  readonly language?: Language;
  /** Its texts in other languages. */
  readonly translations?: readonly Translation[];
};

/** The exercise of that id; undefined where the catalogue has none. */
export const findExercise = (catalogue: Catalogue, id: string): Exercise | undefined =>
  catalogue.exercises.find((exercise) => exercise.id === id);

/** The named ways to miss a criterion in an exercise, in the library's order; empty where it isn't judged. */
export const faultsFor = (exercise: Exercise, criterion: CriterionId): readonly Fault[] =>
  exercise.faults.filter((fault) => fault.criterion === criterion);
