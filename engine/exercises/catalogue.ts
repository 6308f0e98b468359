import type { Language } from '../language/language.ts';
import type { Rubric } from '../rubric/rubric.ts';
import type { Caution } from './caution.ts';
import type { Exercise } from './exercise.ts';
import type { Translation } from './translation.ts';

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
