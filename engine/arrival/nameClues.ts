import type { View } from '../exercises/exercise.ts';
import { namesOf, plainWords, type SearchedCatalogue } from '../exercises/searchExercises.ts';
import { kgPerLb } from '../review/load.ts';

/** The names of exercises, each as one run of plain words; a name that several exercises go by means none of them. */
export type ExerciseNames = {
  readonly meaning: ReadonlyMap<string, string | null>;
  /** The most words that a name has. */
  readonly longest: number;
};

/** Reads every name by which a catalogue's exercises are known, once for all clips. */
export function exerciseNames(catalogue: SearchedCatalogue): ExerciseNames {
  const meaning = new Map<string, string | null>();
  let longest = 1;
  for (const exercise of catalogue.exercises) {
    for (const name of namesOf(exercise, catalogue)) {
      const words = plainWords(name);
      const run = words.join('');
      longest = Math.max(longest, words.length);
      const other = meaning.get(run);
      meaning.set(run, other === undefined || other === exercise.id ? exercise.id : null);
    }
  }
  return { meaning, longest };
}

/** What the name of a file or folder says of its clip. */
export type NameClues = {
  readonly exercise: string | null;
  readonly view: View | null;
  readonly loadKg: number | null;
};

/** Everyday words for where the camera stood, plain as they are compared. */
const viewWords: Readonly<Record<string, View>> = {
  side: 'side',
  seite: 'side',
  seitlich: 'side',
  profil: 'side',
  front: 'front',
  vorn: 'front',
  vorne: 'front',
  frontal: 'front',
  rear: 'rear',
  back: 'rear',
  behind: 'rear',
  hinten: 'rear',
  oblique: 'oblique',
  diagonal: 'oblique',
  schrag: 'oblique',
};

/** What a name says: the exercise whose name is the longest in it, and, in the words that are left, the view; the load with its unit. */
export function nameClues(name: string, names: ExerciseNames): NameClues {
  const words = plainWords(
    withoutExtension(name)
      .replaceAll('_', ' ')
      .replace(/(?<=\p{L})(?=\d)|(?<=\d)(?=\p{L})/gu, ' '),
  );
  const found = longestName(words, names);
  const rest = found === null ? words : words.toSpliced(found.first, found.count);
  const view = rest.map((word) => viewWords[word]).find((known) => known !== undefined) ?? null;
  return { exercise: found?.exercise ?? null, view, loadKg: loadIn(name) };
}

function longestName(
  words: readonly string[],
  { meaning, longest }: ExerciseNames,
): { readonly exercise: string; readonly first: number; readonly count: number } | null {
  for (let count = Math.min(longest, words.length); count > 0; count -= 1) {
    for (let first = 0; first + count <= words.length; first += 1) {
      const exercise = meaning.get(words.slice(first, first + count).join(''));
      if (exercise !== undefined && exercise !== null) return { exercise, first, count };
    }
  }
  return null;
}

/** "100kg", "82,5 kg", "225 lb" */
function loadIn(name: string): number | null {
  const [, figure, unit] = /(?<![\d.,])(\d{1,3}(?:[.,]\d{1,2})?)[ _-]?(kg|lbs?)(?![a-z])/i.exec(name) ?? [];
  if (figure === undefined || unit === undefined) return null;
  const load = Number(figure.replace(',', '.'));
  return unit.toLowerCase() === 'kg' ? load : Math.round(load * kgPerLb * 100) / 100;
}

const withoutExtension = (name: string): string => name.replace(/\.[a-z0-9]{2,4}$/i, '');
