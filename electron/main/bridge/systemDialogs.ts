import { readFile } from 'node:fs/promises';
import * as v from 'valibot';

/** What only the person at the desk can answer, and what they are shown outside of the window. */
export type SystemDialogs = {
  /** Where to save; null = they changed their mind. */
  readonly whereToSave: (suggestion: SaveSuggestion) => Promise<string | null>;
  /** Which clips; none = they changed their mind. */
  readonly whichClips: () => Promise<readonly string[]>;
  /** Which folder, and what for; null = they changed their mind. */
  readonly whichFolder: (purpose: FolderPurpose) => Promise<string | null>;
  /** Which file to import as a session; null = they changed their mind. */
  readonly whichSessionFile: () => Promise<string | null>;
  /** Shows a file or folder in the system's file manager. */
  readonly showInFolder: (path: string) => void;
};

export type FolderPurpose = 'handOver' | 'openLibrary' | 'receive' | 'import' | 'watch';

export type SaveSuggestion = {
  /** File name without extension, already safe for any file system. */
  readonly name: string;
  /** Extension without a dot. */
  readonly extension: string;
};

const chosenSchema = v.strictObject({
  save: v.optional(v.nullable(v.string()), null),
  open: v.optional(v.array(v.string()), []),
  folder: v.optional(v.nullable(v.string()), null),
});

/**
 * Answers the dialogs from a file, because native dialogs can't be driven by a test. The file is read anew at each
 * question: `{"save": path or null, "open": [paths], "folder": path or null}`.
 */
export function chooseFromFile(file: string): SystemDialogs {
  const read = async () => v.parse(chosenSchema, JSON.parse(await readFile(file, 'utf8')));
  return {
    whereToSave: async () => (await read()).save,
    whichClips: async () => (await read()).open,
    whichFolder: async () => (await read()).folder,
    whichSessionFile: async () => (await read()).open[0] ?? null,
    showInFolder: () => undefined,
  };
}

/** The file with a test's answers, only where the environment says that this is a test. */
export function chosenPathsFile(environment: Readonly<Record<string, string | undefined>>): string | null {
  const file = environment.RACKSIDE_CHOSEN_PATHS ?? '';
  return environment.RACKSIDE_TEST === '1' && file !== '' ? file : null;
}
