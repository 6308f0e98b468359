import type { Writable } from 'node:stream';
import type { MediaTools } from '../tools/mediaTools.ts';
import { cancelledWork } from '../tools/refuse.ts';
import { startTool } from '../tools/startTool.ts';

const longestComplaint = 2_000;

export type Feed = {
  /** Everything after the program's name; raw frames are read from `pipe:0`. */
  readonly args: readonly string[];
  /** Raw frames. The bytes of one may be used again once the next is asked for. */
  readonly frames: AsyncIterable<Uint8Array>;
  /** Called with what is written to `pipe:1`. */
  readonly onOutput?: (bytes: Uint8Array) => void;
  readonly signal?: AbortSignal | undefined;
};

/**
 * Runs ffmpeg on raw frames, each asked for when ffmpeg has taken the one before, so that nothing piles up. Throws
 * `cancelled`, what the frames' source throws, or a plain error with ffmpeg's last lines.
 */
export async function feedFfmpeg(tools: MediaTools, { args, frames, onOutput, signal }: Feed): Promise<void> {
  const stopped = () => signal?.aborted === true;
  if (stopped()) throw cancelledWork();
  const ffmpeg = await startTool(tools.ffmpeg, ['-hide_banner', '-v', 'error', ...args], signal);
  ffmpeg.stdout.on('data', (bytes: Uint8Array) => onOutput?.(bytes));
  // A broken pipe says less than the way ffmpeg ended.
  ffmpeg.stdin.on('error', () => undefined);
  try {
    for await (const frame of frames) {
      if (stopped()) throw cancelledWork();
      if (!(await isWritten(ffmpeg.stdin, frame))) break;
    }
    ffmpeg.stdin.end();
    const { failed, complaint } = await ffmpeg.ended;
    if (failed) throw new Error(complaint.slice(-longestComplaint));
  } catch (error) {
    throw stopped() ? cancelledWork() : error;
  } finally {
    ffmpeg.stop();
    await ffmpeg.ended;
  }
  if (stopped()) throw cancelledWork();
}

/** Resolves when a frame has gone down the pipe; false when nobody reads it any more. */
function isWritten(pipe: Writable, frame: Uint8Array): Promise<boolean> {
  return new Promise((resolve) => {
    pipe.write(frame, (error) => resolve(error === null || error === undefined));
  });
}
