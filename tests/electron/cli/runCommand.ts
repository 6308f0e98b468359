import { execFile } from 'node:child_process';
import path from 'node:path';
import { runCommandLine } from '../../../electron/cli/program/runCommandLine.ts';

export const rootFolder = path.resolve(import.meta.dirname, '../../..');

export type Ran = { readonly code: number; readonly stdout: string; readonly stderr: string };

/** Runs the command line in this process: all but `main.ts`. A new process would take longer to start than most commands take. */
export async function run(args: readonly string[], workingFolder: string = rootFolder): Promise<Ran> {
  const [output, messages] = [new Written(), new Written()];
  const { signal } = new AbortController();
  const code = await runCommandLine(args, { environment: {}, workingFolder, output, messages, signal });
  return { code, stdout: output.text(), stderr: messages.text() };
}

/** What a command wrote. */
class Written {
  readonly isTTY = false;
  readonly columns = 80;
  readonly #pieces: Uint8Array[] = [];

  readonly write = (piece: string | Uint8Array): void => void this.#pieces.push(Buffer.from(piece));

  text = (): string => Buffer.concat(this.#pieces).toString();
}

/** Runs the real command line as a program of its own, as npm does: what it says of its own faults is in `stderr` as well. */
export function runProgram(
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
