import type { MediaTools } from '../tools/mediaTools.ts';
import { cancelledWork } from '../tools/refuse.ts';
import { type RunningTool, startTool } from '../tools/startTool.ts';

export type DecodedFrames = {
  /** Everything after the program's name; raw frames have to go to `pipe:1`. */
  readonly args: readonly string[];
  /** Bytes of one frame; whatever is left over at the end is dropped. */
  readonly frameBytes: number;
  /** `shared`: every frame comes in the same bytes, to be done with before the next is asked for. */
  readonly bytes?: 'own' | 'shared' | undefined;
  readonly signal?: AbortSignal | undefined;
};

/** Longest wait for a picture: one that lies minutes of large footage after the last is long in coming. */
const idleMs = 1_800_000;

/**
 * Runs ffmpeg and gives what it writes to its output, cut into frames of one size. Nothing is held but the frame in hand:
 * ffmpeg waits until it is asked for more. Returns the error it ended with, if any; throws `cancelled`.
 */
export async function* decodedFrames(
  { ffmpeg: tool }: MediaTools,
  { args, frameBytes, bytes: whose = 'own', signal }: DecodedFrames,
): AsyncGenerator<Uint8Array, Error | null, void> {
  const stopped = () => signal?.aborted === true;
  if (stopped()) throw cancelledWork();
  const ffmpeg = await startTool(tool, args, signal);
  ffmpeg.stdin.end();
  try {
    for await (const bytes of wholeFrames(chunksOf(ffmpeg), frameBytes, whose)) {
      if (stopped()) throw cancelledWork();
      yield bytes;
    }
    const { complaint } = await ffmpeg.ended;
    if (stopped()) throw cancelledWork();
    return complaint === '' ? null : new Error(complaint);
  } finally {
    ffmpeg.stop();
    await ffmpeg.ended;
  }
}

type Chunk = Uint8Array<ArrayBuffer>;

/** What ffmpeg writes, as it comes; ends ffmpeg when it keeps us waiting too long. */
async function* chunksOf({ stdout, stop }: RunningTool): AsyncGenerator<Chunk, void, void> {
  const chunks: AsyncIterator<Chunk> = stdout[Symbol.asyncIterator]();
  try {
    for (;;) {
      const silence = setTimeout(stop, idleMs);
      const next = await chunks.next().finally(() => clearTimeout(silence));
      if (next.done === true) return;
      yield next.value;
    }
  } finally {
    await chunks.return?.();
  }
}

async function* wholeFrames(
  stream: AsyncIterable<Chunk>,
  size: number,
  whose: 'own' | 'shared',
): AsyncGenerator<Uint8Array, void, void> {
  let frame = new Uint8Array(size);
  let filled = 0;
  for await (const chunk of stream) {
    let used = 0;
    while (used < chunk.length) {
      const taken = Math.min(chunk.length - used, size - filled);
      frame.set(chunk.subarray(used, used + taken), filled);
      used += taken;
      filled += taken;
      if (filled < size) continue;
      yield frame;
      if (whose === 'own') frame = new Uint8Array(size);
      filled = 0;
    }
    release(chunk);
  }
}

/**
 * Gives a chunk's memory back at once: thousands of them a second keep the garbage collector as busy as the pictures keep us.
 * A chunk that shares its memory with others stays.
 */
function release({ buffer, byteLength }: Chunk): void {
  if (buffer.byteLength === byteLength) buffer.transfer(0);
}
