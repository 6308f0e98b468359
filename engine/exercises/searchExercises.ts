import { type Catalogue, type Translation, textIn, translated, untranslated } from './catalogue.ts';
import { editDistance } from './editDistance.ts';
import type { Exercise } from './exercise.ts';

/** What a search reads: the exercises, and their names in other languages. */
export type SearchedCatalogue = Pick<Catalogue, 'exercises' | 'translations'>;

/** What a typed name stands for: one exercise, or none and those that may have been meant, the likeliest first. */
type NamedExercise =
  | { readonly kind: 'found'; readonly exercise: Exercise }
  | { readonly kind: 'unknown'; readonly near: readonly Exercise[] };

const inFull: Readonly<Record<string, string>> = {
  db: 'dumbbell',
  bb: 'barbell',
  kb: 'kettlebell',
  kh: 'kurzhantel',
  lh: 'langhantel',
};

/** A word without accents, umlauts or the s of a plural, so that "Überzüge", "uberzuge" and "ueberzuege" are one. */
function plain(word: string): string {
  const letters = word
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/([aou])e/g, '$1');
  const single = letters.length > 2 ? letters.replace(/(?<!s)s$/, '') : letters;
  return inFull[single] ?? single;
}

/** The words of a name, each without case, accents, umlauts and plural; "bench press (dumbbells)" has three. */
export const plainWords = (name: string): string[] =>
  name
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .split(/[^\p{L}\p{M}\p{N}]+/u)
    .filter((word) => word !== '')
    .map(plain);

/** Every name that an exercise goes by: id, name, everyday names, and its name in other languages. */
export const namesOf = ({ id, name, aliases }: Exercise, { translations = [] }: SearchedCatalogue): string[] => [
  ...[id, name],
  ...(aliases?.en ?? []),
  ...(aliases?.de ?? []),
  ...translations.map(({ texts }) => textIn(texts, name)),
];

type Spoken = { readonly words: readonly string[]; readonly run: string };
const spoken = (name: string): Spoken => {
  const words = plainWords(name);
  return { words, run: words.join('') };
};

/** One name has the words of the other, in any order. */
const sameWords = (a: Spoken, b: Spoken): boolean => a.words.toSorted().join(' ') === b.words.toSorted().join(' ');

/** How well a name answers what was typed: lower is better, null = not at all. */
function rank(name: Spoken, typed: Spoken): number | null {
  if (name.run === typed.run || sameWords(name, typed)) return 0;
  // The fewer letters are still to come, the likelier it is meant: "squ" is a squat before a squat press.
  if (name.run.startsWith(typed.run)) return 2 - typed.run.length / name.run.length;
  if (typed.words.every((word) => name.words.some((part) => part.startsWith(word)))) return 2;
  if (typed.words.every((word) => name.words.some((part) => part.includes(word)))) return 3;
  return name.run.includes(typed.run) ? 4 : null;
}

type Ranked = { readonly exercise: Exercise; readonly rank: number };

function ranked(catalogue: SearchedCatalogue, how: (name: Spoken) => number | null): Ranked[] {
  return catalogue.exercises
    .flatMap((exercise) => {
      const ranks = namesOf(exercise, catalogue).flatMap((name) => how(spoken(name)) ?? []);
      return ranks.length === 0 ? [] : [{ exercise, rank: Math.min(...ranks) }];
    })
    .toSorted((a, b) => a.rank - b.rank);
}

const answering = (catalogue: SearchedCatalogue, typed: Spoken): Ranked[] =>
  ranked(catalogue, (name) => rank(name, typed));

/** The share of wrong letters between two words; null where more than a third are wrong, or all but one. */
function misspelt(a: string, b: string): number | null {
  const length = Math.max(a.length, b.length);
  if (Math.abs(a.length - b.length) > length / 3) return null;
  const distance = editDistance(a, b);
  return distance <= length / 3 && distance < length - 1 ? distance / length : null;
}

/** Those with a name spelt nearly as typed, then those with one such word. */
const near = (catalogue: SearchedCatalogue, typed: Spoken): Ranked[] =>
  ranked(catalogue, (name) => {
    const whole = misspelt(name.run, typed.run);
    if (whole !== null) return whole;
    const words = name.words.flatMap((word) => misspelt(word, typed.run) ?? []);
    return words.length === 0 ? null : 1 + Math.min(...words);
  });

/**
 * The exercises that answer what was typed, best first: by id, name or everyday name in any language of the catalogue,
 * whatever the case, hyphens, spaces, plural or order of words. Where none does, those whose name is spelt nearly so.
 * All of them, in the catalogue's order, while nothing is typed.
 */
export function searchExercises(catalogue: SearchedCatalogue, typed: string): Exercise[] {
  const wanted = spoken(typed);
  if (wanted.run === '') return [...catalogue.exercises];
  const found = answering(catalogue, wanted);
  return (found.length > 0 ? found : near(catalogue, wanted)).map(({ exercise }) => exercise);
}

const mostSuggested = 3;

/** The exercise that goes by a name a person typed; else up to three that may have been meant. */
export function exerciseNamed(catalogue: SearchedCatalogue, typed: string): NamedExercise {
  const byId = catalogue.exercises.find(({ id }) => id === typed);
  if (byId !== undefined) return { kind: 'found', exercise: byId };
  const wanted = spoken(typed);
  if (wanted.run === '') return { kind: 'unknown', near: [] };
  const found = answering(catalogue, wanted);
  const [first, second] = found.filter((one) => one.rank === 0);
  if (first !== undefined && second === undefined) return { kind: 'found', exercise: first.exercise };
  const meant = [...found, ...near(catalogue, wanted)].map(({ exercise }) => exercise);
  return { kind: 'unknown', near: [...new Set(meant)].slice(0, mostSuggested) };
}

/**
 * The names of the exercises in the languages that a catalogue does not speak, each under its name there, and none of the
 * other texts: what a search needs of them.
 */
export function nameTranslations(catalogue: Catalogue): Translation[] {
  const original = untranslated(catalogue);
  const here = new Map(catalogue.exercises.map(({ id, name }) => [id, name]));
  return [original.language ?? 'en', ...(original.translations ?? []).map(({ language }) => language)]
    .filter((language) => language !== (catalogue.language ?? 'en'))
    .map((language) => ({
      language,
      texts: Object.fromEntries(
        translated(original, language).exercises.map(({ id, name }) => [here.get(id) ?? name, name]),
      ),
    }));
}
