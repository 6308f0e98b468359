import path from 'node:path';
import type { Progress } from './progress.ts';

/** What every command works with: its folders, its output, and when to stop. */
export type Host = {
  /** Folder of the application: holds `seeds/` and `migrations/`. */
  readonly appFolder: string;
  /** The absolute path of a file or folder that the person named. */
  readonly resolve: (name: string) => string;
  /** Writes to standard output: the answer, nothing else. */
  readonly print: (content: string | Uint8Array) => void;
  /** Writes one line to standard error: what a person should know. */
  readonly say: (line: string) => void;
  readonly progress: Progress;
  /** Aborted by Ctrl-C. */
  readonly signal: AbortSignal;
};

/** The folder that relative names start from: npm runs its scripts in the package's folder, wherever the person was. */
export function baseFolder(environment: NodeJS.ProcessEnv, workingFolder: string): string {
  const { npm_lifecycle_event: script, INIT_CWD: before } = environment;
  const byNpm = script === 'rackside' || script === 'demo';
  return byNpm && before !== undefined && path.isAbsolute(before) ? before : workingFolder;
}
