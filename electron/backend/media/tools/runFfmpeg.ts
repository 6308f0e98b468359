import { stat } from 'node:fs/promises';
import ffmpegCommand from 'fluent-ffmpeg';
import * as v from 'valibot';
import { ProblemError } from '../../../contract/reply.ts';
import type { MediaTools } from './mediaTools.ts';
import { cancelledWork, shownName } from './refuse.ts';
import { fileAddress, safeInputOptions } from './safeInput.ts';
import { startTool } from './startTool.ts';
import { writeWholeFile } from './writeWholeFile.ts';

/** Longest silence: ffmpeg tells of its progress twice a second, but not while it moves a file's index to its front. */
const idleMs = 600_000;

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
    await runToEnd(tools, work, unfinished);
    if ((await stat(unfinished)).size === 0) throw failure(work.input, 'nothing was decoded');
    return 'whole';
  });
}

async function runToEnd(tools: MediaTools, work: FfmpegWork, unfinished: string): Promise<void> {
  const { signal } = work;
  const ffmpeg = await startTool(tools.ffmpeg, argumentsOf(work, unfinished), signal);
  ffmpeg.stdin.end();
  ffmpeg.stdout.resume();
  const silence = setTimeout(ffmpeg.stop, idleMs);
  ffmpeg.stderr.on('data', (said: Buffer) => {
    silence.refresh();
    const frames = progressOf(said.toString());
    if (frames !== null) work.onFrames?.(frames);
  });
  const { failed, complaint } = await ffmpeg.ended;
  clearTimeout(silence);
  if (signal?.aborted === true) throw cancelledWork();
  if (failed) throw failure(work.input, complaint);
}

/** The library puts a command together; it can't start one with less than all rights. */
function argumentsOf({ input, inputOptions, outputOptions }: FfmpegWork, unfinished: string): readonly string[] {
  // Options go in one by one: given as one array, the library would split those that hold a space.
  const command = ffmpegCommand()
    .input(fileAddress(input))
    .inputOptions('-hide_banner', ...['-v', 'error', '-stats', '-nostdin', '-y'], ...safeInputOptions, ...inputOptions)
    .output(fileAddress(unfinished))
    .outputOptions('-dn', ...outputOptions);
  const build = '_getArguments' in command ? command._getArguments : undefined;
  return v.parse(v.array(v.string()), typeof build === 'function' ? build.call(command) : undefined);
}

const statusLine = /^frame=\s*(\d+)/;

/** The last number of frames in what ffmpeg said. */
function progressOf(said: string): number | null {
  const written = said
    .split(/[\r\n]/)
    .map((line) => statusLine.exec(line)?.[1])
    .findLast((frames) => frames !== undefined);
  return written === undefined ? null : Number(written);
}

function failure(input: string, complaint: string): ProblemError {
  const lines = complaint.split(/[\r\n]+/).filter((line) => line.trim() !== '' && !statusLine.test(line));
  const tail = lines.slice(-8).join('\n');
  const full = /No space left on device/i.test(tail);
  return new ProblemError(
    full ? 'disk' : 'bad-media',
    full ? 'diskFullFor' : 'notDecoded',
    { file: shownName(input) },
    { cause: new Error(tail) },
  );
}
