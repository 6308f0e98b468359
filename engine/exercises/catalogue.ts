import * as v from 'valibot';
import { type Language, languageSchema } from '../language/language.ts';
import type { CriterionId, Rubric } from '../rubric/rubric.ts';
import type { Exercise, Fault } from './exercise.ts';

/** A caution, printed where it applies. */
export const cautionSchema = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{1,59}$/)),
  topic: v.string(),
  /** Plain sentences, printed as they are. */
  text: v.string(),
  source: v.string(),
  /**
   * When it is printed: always; with a pain note, or with one on pain that only has to settle; with a stop flag; for minors;
   * for exercises and found faults that name it. Of the last kind, `homeMade` is for exercises only where what there is to
   * train with may be home-made, and `breath` is also for words that ask to hold the breath.
   */
  applies: v.picklist(['always', 'pain', 'painToSettle', 'stop', 'minor', 'exercise', 'homeMade', 'breath']),
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

/**
 * The texts of the judging data in another language, each under the English text it stands for. A text that is missing
 * stays English.
 */
export const translationSchema = v.strictObject({
  language: languageSchema,
  texts: v.record(v.string(), v.pipe(v.string(), v.minLength(1))),
});
export type Translation = v.InferOutput<typeof translationSchema>;

/** A text in the language of a translation's texts; the text itself where they don't have it. */
export const textIn = (texts: Translation['texts'], english: string): string =>
  Object.hasOwn(texts, english) ? (texts[english] ?? english) : english;

/**
 * Translations that are kept in several parts, as one for each language. Throws an Error naming a text that two parts
 * translate differently.
 */
export function inOneEach(parts: readonly Translation[]): Translation[] {
  const whole = new Map<Language, Record<string, string>>();
  for (const { language, texts } of parts) {
    const known = whole.get(language) ?? {};
    for (const [english, text] of Object.entries(texts)) {
      if (Object.hasOwn(known, english) && known[english] !== text) {
        throw new Error(`translation ${language}: "${english}" is translated in two ways`);
      }
    }
    whole.set(language, { ...known, ...texts });
  }
  return [...whole].map(([language, texts]) => ({ language, texts }));
}

/** Names that other data is looked up by: never translated. */
const ids = new Set([
  ...['id', 'pattern', 'criterion', 'narrower', 'partOf', 'exercise', 'takenFrom', 'letter'],
  ...['with', 'caution', 'needs', 'aliases', 'patterns'],
]);

function inTexts<T>(value: T, texts: Readonly<Record<string, string>>): T;
function inTexts(value: unknown, texts: Readonly<Record<string, string>>): unknown {
  if (typeof value === 'string') return textIn(texts, value);
  if (Array.isArray(value)) return value.map((one) => inTexts(one, texts));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, one]) => [key, ids.has(key) ? one : inTexts(one, texts)]);
  return Object.fromEntries(entries);
}

const made = new WeakMap<Catalogue, Map<Language, Catalogue>>();
const originals = new WeakMap<Catalogue, Catalogue>();

/** The catalogue that one was translated from, whose texts are English; itself where it is no translation. */
export const untranslated = (catalogue: Catalogue): Catalogue => originals.get(catalogue) ?? catalogue;

/** The judging data in a language, text by text; what has no translation stays English. */
export function translated(catalogue: Catalogue, language: Language): Catalogue {
  if (language === (catalogue.language ?? 'en')) return catalogue;
  const known = made.get(catalogue)?.get(language);
  if (known !== undefined) return known;
  const texts = catalogue.translations?.find((one) => one.language === language)?.texts ?? {};
  const { rubric, exercises, cautions } = inTexts(
    { rubric: catalogue.rubric, exercises: catalogue.exercises, cautions: catalogue.cautions },
    texts,
  );
  const result: Catalogue = { ...catalogue, rubric, exercises, cautions, language };
  made.set(catalogue, (made.get(catalogue) ?? new Map()).set(language, result));
  originals.set(result, untranslated(catalogue));
  return result;
}
