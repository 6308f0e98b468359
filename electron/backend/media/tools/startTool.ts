import type { Readable, Writable } from 'node:stream';
import { endWithBackend } from './endWithBackend.ts';

/** How long ffmpeg may take to stop when it is asked to. */
const killAfterMs = 2_000;

/** Options of every program that is started here. */
const common = {
  encoding: 'utf8',
  reject: false,
  stripFinalNewline: false,
  forceKillAfterDelay: killAfterMs,
  // `endWithBackend` does that, and in threads as well.
  cleanup: false,
} as const;

/** Only long work needs it, so that it does not slow the start. */
const loadExeca = () => import('execa');

export type ToolOutput = { readonly failed: boolean; readonly stdout: string; readonly stderr: string };

/** Limits of a run: a hostile file must not hold the backend up or fill its memory. */
export type ToolLimits = {
  readonly timeoutMs: number;
  /** Most characters of output. */
  readonly maxOutput?: number;
  readonly signal?: AbortSignal | undefined;
};

/** Runs a program to its end and gives what it printed. When it says nothing of its failure, `stderr` says how it ended. */
export async function runTool(
  program: string,
  args: readonly string[],
  { timeoutMs, maxOutput, signal }: ToolLimits,
): Promise<ToolOutput> {
  const { execa } = await loadExeca();
  const running = execa(program, args, {
    ...common,
    stdin: 'ignore',
    timeout: timeoutMs,
    killSignal: 'SIGKILL',
    env: { AV_LOG_FORCE_NOCOLOR: '1' },
    ...(maxOutput !== undefined && { maxBuffer: maxOutput }),
    ...(signal && { cancelSignal: signal }),
  });
  endWithBackend(running);
  const { failed, stdout, stderr, shortMessage } = await running;
  return { failed, stdout, stderr: failed && stderr === '' ? (shortMessage ?? '') : stderr };
}

/** A program that takes or gives raw bytes while it runs. */
export type RunningTool = {
  readonly stdin: Writable;
  readonly stdout: Readable;
  /** Asks it to end, and ends it if it does not. Does nothing once it has ended. */
  readonly stop: () => void;
  /** Resolves when it has ended and its output is closed: how, and what it complained of. Never rejects. */
  readonly ended: Promise<{ readonly failed: boolean; readonly complaint: string }>;
};

/** Starts a program; `signal` ends it. Its output has to be read or destroyed, else it never ends. */
export async function startTool(
  program: string,
  args: readonly string[],
  signal: AbortSignal | undefined,
): Promise<RunningTool> {
  const { execa } = await loadExeca();
  const running = execa(program, args, {
    ...common,
    stdin: 'pipe',
    buffer: { stdout: false },
    ...(signal && { cancelSignal: signal }),
  });
  endWithBackend(running);
  const ended = running.then(({ failed, stderr, shortMessage }) => ({
    failed,
    complaint: stderr.trim() || (failed ? (shortMessage ?? '') : ''),
  }));
  return { stdin: running.stdin, stdout: running.stdout, stop: () => void running.kill(), ended };
}
