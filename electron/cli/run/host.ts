import path from 'node:path';
import { sayTimeLeft } from '../../../engine/wording/sayTimeLeft.ts';
import { secondsLeft } from '../../contract/timeLeft.ts';

/** What a command line runs in: a process, or what stands for one. */
export type Surroundings = {
  readonly environment: NodeJS.ProcessEnv;
  readonly workingFolder: string;
  /** Standard output. */
  readonly output: { readonly isTTY?: boolean; readonly write: (content: string | Uint8Array) => unknown };
  /** Standard error. */
  readonly messages: Terminal;
  /** Aborted by Ctrl-C. */
  readonly signal: AbortSignal;
};

/** What every command works with: its folders, its output, and when to stop. */
export type Host = {
  /** Folder of the application: holds `seeds/` and `migrations/`. */
  readonly appFolder: string;
  /** The absolute path of a file or folder that the person named. */
  readonly resolve: (name: string) => string;
  /** Writes to standard output: the answer, nothing else. */
  readonly print: (content: string | Uint8Array) => void;
  /** Somebody looks at standard output; it is no file or other program. */
  readonly printsToTerminal: boolean;
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

/** Shows how far the work has come. */
export type Progress = {
  /** `share` 0-1, null while unknown. */
  readonly show: (share: number | null, what: string) => void;
  /** Removes the bar. */
  readonly clear: () => void;
};

const cells = 24;

/** What a bar needs of a stream. */
type Terminal = Pick<NodeJS.WriteStream, 'isTTY' | 'columns'> & { readonly write: (text: string) => unknown };

/**
 * A progress bar on a terminal, with the time left once that can be told; nothing on any other stream.
 *
 * @param nowMs the time that passes, in milliseconds
 */
export function makeProgress(stream: Terminal, nowMs: () => number = performance.now.bind(performance)): Progress {
  if (!stream.isTTY) return { show: () => undefined, clear: () => undefined };
  let shown = '';
  let startedMs: number | null = null;
  const draw = (line: string) => {
    if (line === shown) return;
    shown = line;
    stream.write(`\r\u001b[2K${line}`);
  };
  return {
    show: (share, what) => {
      startedMs ??= nowMs();
      const left = secondsLeft((nowMs() - startedMs) / 1000, share);
      const words = left === null ? what : `${sayTimeLeft(left, 'en')}, ${what}`;
      const room = Math.max(0, (stream.columns || 80) - cells - 10);
      draw(`${bar(share)} ${[...words].slice(0, room).join('')}`);
    },
    clear: () => {
      startedMs = null;
      draw('');
    },
  };
}

/** A bar such as "[######------] 50 %", or dots while the share is unknown. */
export function bar(share: number | null): string {
  if (share === null) return `[${'.'.repeat(cells)}]      `;
  const done = Math.round(Math.min(1, Math.max(0, share)) * cells);
  const percent = String(Math.floor(Math.min(1, Math.max(0, share)) * 100)).padStart(3);
  return `[${'#'.repeat(done)}${'-'.repeat(cells - done)}] ${percent} %`;
}
