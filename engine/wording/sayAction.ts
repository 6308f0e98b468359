import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { Language } from '../language/language.ts';
import type { Message, MessageValue } from '../message/message.ts';
import { actions as english } from './english/actions.ts';
import { actions as german } from './german/actions.ts';
import { sayStoredMeasuring } from './sayMeasuring.ts';
import { sayerOf } from './wordings.ts';

/** What can be done in a session, and the parts that some of it names. */
export type ActionId = keyof typeof english;

const isActionId = (id: string): id is ActionId => Object.hasOwn(english, id);

const listOf = (value: MessageValue | undefined): readonly (string | number)[] =>
  typeof value === 'object' ? value : [];

/** What a flag or tick is about: its fault, else its criterion, by the names that the catalogue has for them. */
function whatOf({ exercise, fault, criterion }: Message['values'], catalogue: Catalogue | null): string {
  const faults = catalogue === null ? [] : (findExercise(catalogue, String(exercise))?.faults ?? []);
  const criteria = catalogue?.rubric.criteria ?? [];
  const named = faults.find(({ id }) => id === fault) ?? criteria.find(({ id }) => id === criterion);
  return named?.name ?? String(fault === '' ? criterion : fault);
}

/**
 * The name of an action in a language. Its values hold exercises, faults and criteria by their ids: the catalogue gives
 * their names, in its own language. An action that was stored before it was data says the words it was stored as.
 */
export function sayAction({ id, values }: Message, language: Language, catalogue: Catalogue | null): string {
  const say = sayerOf({ en: english, de: german }, language);
  if (!isActionId(id)) return id;
  const { exercise, reps, parts, said } = values;
  return say(id, {
    ...values,
    ...(exercise !== undefined && {
      exercise: (catalogue && findExercise(catalogue, String(exercise))?.name) ?? exercise,
    }),
    ...(typeof reps === 'object' && { what: whatOf(values, catalogue), count: listOf(reps).length }),
    ...(parts !== undefined && {
      parts: listOf(parts).map((part) => (typeof part === 'string' && isActionId(part) ? say(part) : part)),
    }),
    ...(said !== undefined && { said: sayStoredMeasuring({ id: String(said), values }, language) ?? '' }),
  });
}
