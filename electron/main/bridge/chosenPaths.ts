import { readFile } from 'node:fs/promises';
import * as v from 'valibot';

/** The two questions that only a person can answer. */
export type PathChooser = {
  /** Where to save; null = the person changed their mind. */
  readonly whereToSave: (suggestion: SaveSuggestion) => Promise<string | null>;
  /** Which clips; none = the person changed their mind. */
  readonly whichClips: () => Promise<readonly string[]>;
};

export type SaveSuggestion = {
  /** File name without extension, already safe for any file system. */
  readonly name: string;
  /** Extension without a dot. */
  readonly extension: string;
};

const chosenSchema = v.strictObject({
  save: v.optional(v.nullable(v.string()), null),
  open: v.optional(v.array(v.string()), []),
});

/**
 * Answers the questions from a file, because native dialogs can't be driven by a test. The file is read anew at each
 * question: `{"save": path or null, "open": [paths]}`.
 */
export function chooseFromFile(file: string): PathChooser {
  const read = async () => v.parse(chosenSchema, JSON.parse(await readFile(file, 'utf8')));
  return {
    whereToSave: async () => (await read()).save,
    whichClips: async () => (await read()).open,
  };
}

/** The file with a test's answers, only where the environment says that this is a test. */
export function chosenPathsFile(environment: Readonly<Record<string, string | undefined>>): string | null {
  const file = environment.RACKSIDE_CHOSEN_PATHS ?? '';
  return environment.RACKSIDE_TEST === '1' && file !== '' ? file : null;
}
