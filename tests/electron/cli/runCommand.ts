import { execFile } from 'node:child_process';
import path from 'node:path';

export const rootFolder = path.resolve(import.meta.dirname, '../../..');

export type Ran = { readonly code: number; readonly stdout: string; readonly stderr: string };

/** Runs the real command line as a program of its own, as npm does. */
export function run(
  args: readonly string[],
  folder: string = rootFolder,
  environment: Readonly<Record<string, string>> = {},
): Promise<Ran> {
  const guard = path.join(rootFolder, 'electron', 'launch', 'guard.mjs');
  return new Promise((resolve) => {
    execFile(
      process.execPath,
      [guard, '../cli/main.ts', ...args],
      { cwd: folder, env: { ...process.env, ...environment }, maxBuffer: 64 * 1024 * 1024 },
      (error, stdout, stderr) => {
        resolve({ code: error === null ? 0 : Number(error.code), stdout, stderr });
      },
    );
  });
}

/** The lines a person reads on standard error. */
export const linesOf = (text: string): string[] => text.split('\n').filter((line) => line !== '');
