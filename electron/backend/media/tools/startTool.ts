import { type ChildProcess, spawn } from 'node:child_process';
import { Socket } from 'node:net';
import type { Readable, Writable } from 'node:stream';
import { type Confined, withLeastRights } from './leastRights.ts';

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
  // A group of its own, so that it can be ended with all that it started. Windows would show a console for it.
  detached: process.platform !== 'win32',
} as const;

/** Only long work needs it, so that it does not slow the start. */
const loadExeca = () => import('execa');

export type ToolOutput = { readonly failed: boolean; readonly stdout: string; readonly stderr: string };

/** Limits of a run: a hostile file must not hold the backend up or fill its memory. */
export type ToolLimits = {
  /** Longest run. */
  readonly timeoutMs?: number;
  /** Longest silence: a large file on a slow disk takes its time, a program that says nothing more hangs. */
  readonly idleMs?: number;
  /** Most characters of output. */
  readonly maxOutput?: number;
  readonly signal?: AbortSignal | undefined;
};

/** Runs a program to its end and gives what it printed. When it says nothing of its failure, `stderr` says how it ended. */
export async function runTool(
  tool: Confined,
  args: readonly string[],
  { timeoutMs, idleMs, maxOutput, signal }: ToolLimits,
): Promise<ToolOutput> {
  const { execa } = await loadExeca();
  const confined = await withLeastRights(tool, args);
  const running = execa(confined.program, confined.args, {
    ...common,
    stdin: 'ignore',
    ...(timeoutMs !== undefined && { timeout: timeoutMs }),
    killSignal: 'SIGKILL',
    env: { AV_LOG_FORCE_NOCOLOR: '1' },
    ...(maxOutput !== undefined && { maxBuffer: maxOutput }),
    ...(signal && { cancelSignal: signal }),
  });
  endWithBackend(running);
  const silence = idleMs === undefined ? undefined : setTimeout(() => running.kill('SIGKILL'), idleMs);
  running.stdout.on('data', () => silence?.refresh());
  const { failed, stdout, stderr, shortMessage } = await running;
  clearTimeout(silence);
  return { failed, stdout, stderr: failed && stderr === '' ? (shortMessage ?? '') : stderr };
}

/** A program that takes or gives raw bytes while it runs. */
export type RunningTool = {
  readonly stdin: Writable;
  readonly stdout: Readable;
  /** What it complains of and tells of its progress. */
  readonly stderr: Readable;
  /** Asks it to end, and ends it if it does not. Does nothing once it has ended. */
  readonly stop: () => void;
  /** Resolves when it has ended and its output is closed: how, and what it complained of. Never rejects. */
  readonly ended: Promise<{ readonly failed: boolean; readonly complaint: string }>;
};

/** Starts a program; `signal` ends it. Its output has to be read or destroyed, else it never ends. */
export async function startTool(
  tool: Confined,
  args: readonly string[],
  signal: AbortSignal | undefined,
): Promise<RunningTool> {
  const { execa } = await loadExeca();
  const confined = await withLeastRights(tool, args);
  const running = execa(confined.program, confined.args, {
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
  const { stdin, stdout, stderr } = running;
  return { stdin, stdout, stderr, stop: () => void running.kill(), ended };
}

/**
 * A shell that reads "start PID" and "end PID". Its input ends when the process that writes to it is gone, however that
 * came about; then it kills every program that started and has not ended, with its whole group.
 */
const watchScript = `
running=' '
while read -r what pid; do
  case $what in
    start) running="$running$pid " ;;
    end) running="\${running%% $pid *} \${running#* $pid }" ;;
  esac
done
for pid in $running; do
  kill -KILL -- "-$pid"
done
`;

let watch: ChildProcess['stdin'] | undefined;

/**
 * Sees to it that a program ends when this process (or thread) does, even when it is killed and can't do anything about it
 * any more, and that nothing it started outlives it: bubblewrap, killed while it starts, leaves a process that waits for it
 * for ever and keeps the output open. On Windows every child belongs to a job that the system ends with its parent, so there
 * is nothing to do.
 */
function endWithBackend(child: ChildProcess): void {
  const { pid } = child;
  if (process.platform === 'win32' || pid === undefined) return;
  watch ??= startWatch();
  const line = watch;
  line?.write(`start ${pid}\n`);
  child.once('exit', () => {
    killGroup(pid);
    line?.write(`end ${pid}\n`);
  });
}

/** Kills what is left of a group; usually nothing is. */
function killGroup(groupId: number): void {
  try {
    process.kill(-groupId, 'SIGKILL');
  } catch {
    // Nobody of the group lives any more.
  }
}

/** Without a shell there is no watch, and programs run as they did. */
function startWatch(): ChildProcess['stdin'] {
  // A session of its own: Ctrl-C in a terminal goes to the whole group, and must not end the watch first.
  const shell = spawn('/bin/sh', ['-c', watchScript], { stdio: ['pipe', 'ignore', 'ignore'], detached: true });
  shell.on('error', () => undefined);
  shell.unref();
  shell.stdin.on('error', () => undefined);
  if (shell.stdin instanceof Socket) shell.stdin.unref();
  return shell.stdin;
}
