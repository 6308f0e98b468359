import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

/** How long the runtime may take until the window's program runs in it; it takes a second or two. */
export const mostStartMs = 90_000;

export type WindowStart = {
  readonly executable: string;
  readonly args: readonly string[];
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly limitMs: number;
};

/** How the window's program ended; `late` = it did not come to run within the limit, `interrupted` = a person ended it. */
export type WindowEnd = {
  readonly code: number;
  readonly signal: string | null;
  readonly how: 'ran' | 'interrupted' | 'early' | 'late';
};

/** Runs the window's program until it is closed; one that does not come to run within the limit is ended. */
export async function runWindow(start: WindowStart): Promise<WindowEnd> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-start-'));
  try {
    // The program makes this file when it runs.
    return await run(start, path.join(folder, 'runs'));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function run({ executable, args, environment, limitMs }: WindowStart, mark: string): Promise<WindowEnd> {
  return new Promise((resolve, reject) => {
    const child = spawn(executable, args, { stdio: 'inherit', env: { ...environment, RACKSIDE_STARTED: mark } });
    let how: WindowEnd['how'] = 'early';
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
      process.on(signal, () => {
        how = 'interrupted';
        child.kill(signal);
      });
    }
    const limit = setTimeout(() => {
      if (existsSync(mark)) return;
      how = 'late';
      child.kill('SIGKILL');
    }, limitMs);
    child.once('error', (error) => {
      clearTimeout(limit);
      reject(error);
    });
    child.once('exit', (code, signal) => {
      clearTimeout(limit);
      // A start beside a window that is open ends well, and has no more to do.
      if (how === 'early' && (code === 0 || existsSync(mark))) how = 'ran';
      resolve({ code: code ?? 1, signal, how });
    });
  });
}

/** One sentence on a window that did not come, with the log's place; null where it came. */
export function startTrouble({ code, signal, how }: WindowEnd, logFile: string): string | null {
  const rest = `nothing was changed. Start it again; what the window noted of itself, if it came to that, is in ${logFile}`;
  switch (how) {
    case 'late':
      return `The window did not come within ${mostStartMs / 1000} seconds and was given up; ${rest}`;
    case 'early':
      return `The window's program ended before it could run (${signal ?? `code ${code}`}); ${rest}`;
    case 'ran':
    case 'interrupted':
      return null;
  }
}
