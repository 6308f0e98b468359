import { plainWords } from '../exercises/searchExercises.ts';
import type { ArrivedClip, Placement } from './arrival.ts';

export type KnownTrainee = { readonly id: string; readonly name: string };

type TraineeGuess = NonNullable<Placement['trainee']>;

const known = (traineeId: string, basis: TraineeGuess['basis']): TraineeGuess => ({
  value: { kind: 'known', traineeId },
  basis,
});

/**
 * Whose clip it is: whoever was chosen; else the trainee that the innermost telling folder names, then the file's name;
 * else the only one there is, or the one whose clips came in last. A name that could be several people's names nobody.
 */
export function guessTrainee(
  { folders, name, choice }: Pick<ArrivedClip, 'folders' | 'name' | 'choice'>,
  { trainees, lastUsed }: { readonly trainees: readonly KnownTrainee[]; readonly lastUsed: string | null },
): TraineeGuess | null {
  const { traineeId, newTrainee } = choice;
  if (trainees.some(({ id }) => id === traineeId) && traineeId !== undefined) return known(traineeId, 'chosen');
  if (newTrainee !== undefined) return { value: { kind: 'new', name: newTrainee }, basis: 'chosen' };
  const [only, another] = trainees;
  if (only === undefined) return null;
  if (another === undefined) return known(only.id, 'only');
  for (const folder of folders.toReversed()) {
    const meant = namedBy(folder, trainees, 'inPart');
    if (meant.length === 1 && meant[0] !== undefined) return known(meant[0].id, 'folder');
    if (meant.length > 1) break;
  }
  const [inFile, alsoInFile] = namedBy(name, trainees, 'inFull');
  if (inFile !== undefined && alsoInFile === undefined) return known(inFile.id, 'fileName');
  return trainees.some(({ id }) => id === lastUsed) && lastUsed !== null ? known(lastUsed, 'lastUsed') : null;
}

/**
 * The trainees whom a name means, the closest only: those with the same words in any order; else those whose every word
 * it holds; else, where a part will do, those who have every word of it ("mira" for Mira Holt).
 */
function namedBy(name: string, trainees: readonly KnownTrainee[], how: 'inFull' | 'inPart'): readonly KnownTrainee[] {
  const words = new Set(plainWords(name.replaceAll('_', ' ')).filter((word) => !/^\d+$/.test(word)));
  if (words.size === 0) return [];
  const spoken = trainees.map((trainee) => ({ trainee, own: new Set(plainWords(trainee.name)) }));
  const held = spoken.filter(({ own }) => own.size > 0 && own.isSubsetOf(words));
  const same = held.filter(({ own }) => own.size === words.size);
  const inPart = how === 'inPart' ? spoken.filter(({ own }) => words.isSubsetOf(own)) : [];
  const closest = [same, held, inPart].find((found) => found.length > 0) ?? [];
  return closest.map(({ trainee }) => trainee);
}
