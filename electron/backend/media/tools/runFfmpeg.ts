import { ChildProcess } from 'node:child_process';
import { stat } from 'node:fs/promises';
import ffmpeg from 'fluent-ffmpeg';
import { ProblemError } from '../../../contract/reply.ts';
import type { MediaTools } from './mediaTools.ts';
import { cancelledWork, shownName } from './refuse.ts';
import { fileAddress, safeInputOptions } from './safeInput.ts';
import { endWithBackend } from './startTool.ts';
import { writeWholeFile } from './writeWholeFile.ts';

const killAfterMs = 2_000;

export type FfmpegWork = {
  readonly input: string;
  readonly inputOptions: readonly string[];
  readonly output: string;
  readonly outputOptions: readonly string[];
  /** Kind of file to write: names the temporary file, from which ffmpeg takes its muxer. */
  readonly writes: 'mp4' | 'mjpeg';
  /** Called with the number of frames written so far. */
  readonly onFrames?: (frames: number) => void;
  readonly signal?: AbortSignal | undefined;
};

/**
 * Runs ffmpeg from one file to another: to a temporary name beside the output, renamed when it is whole; nothing is
 * left behind on failure. Throws a problem: `cancelled`, `disk`, or `bad-media` with the last
 * lines of ffmpeg as its cause.
 */
export async function runFfmpeg(tools: MediaTools, work: FfmpegWork): Promise<void> {
  await writeWholeFile(work.output, { kind: work.writes, signal: work.signal }, async (unfinished) => {
    await spawnFfmpeg(tools, work, unfinished);
    if ((await stat(unfinished)).size === 0) throw failure(work.input, new Error('nothing was decoded'), '');
    return 'whole';
  });
}

function spawnFfmpeg(tools: MediaTools, work: FfmpegWork, unfinished: string): Promise<void> {
  // Options go in one by one: given as one array, the library would split those that hold a space.
  const command = ffmpeg({ stdoutLines: 40 })
    .setFfmpegPath(tools.ffmpeg.path)
    .input(fileAddress(work.input))
    .inputOptions('-hide_banner', ...['-v', 'error', '-stats', '-nostdin'], ...safeInputOptions, ...work.inputOptions)
    .output(fileAddress(unfinished))
    .outputOptions('-dn', ...work.outputOptions);

  return new Promise((resolve, reject) => {
    let timer: NodeJS.Timeout | undefined;
    const stop = () => {
      command.kill('SIGTERM');
      timer = setTimeout(() => command.kill('SIGKILL'), killAfterMs);
    };
    const settle = () => {
      clearTimeout(timer);
      work.signal?.removeEventListener('abort', stop);
    };
    command.on('start', () => {
      if ('ffmpegProc' in command && command.ffmpegProc instanceof ChildProcess) endWithBackend(command.ffmpegProc);
      if (work.signal?.aborted === true) stop();
    });
    command.on('stderr', (line: string) => {
      const frames = /^frame=\s*(\d+)/.exec(line)?.[1];
      if (frames !== undefined) work.onFrames?.(Number(frames));
    });
    command.on('end', () => {
      settle();
      if (work.signal?.aborted === true) reject(cancelledWork());
      else resolve();
    });
    command.on('error', (error: Error, _stdout: unknown, stderr: unknown) => {
      settle();
      if (work.signal?.aborted === true) reject(cancelledWork());
      else reject(failure(work.input, error, typeof stderr === 'string' ? stderr : ''));
    });
    work.signal?.addEventListener('abort', stop, { once: true });
    command.run();
  });
}

function failure(input: string, error: Error, stderr: string): ProblemError {
  const tail = stderr.trim().split('\n').slice(-8).join('\n');
  const full = /No space left on device/i.test(tail);
  return new ProblemError(
    full ? 'disk' : 'bad-media',
    full ? 'diskFullFor' : 'notDecoded',
    { file: shownName(input) },
    { cause: new Error(tail === '' ? error.message : tail) },
  );
}
