import { spawn } from 'node:child_process';
import type { Readable } from 'node:stream';
import { cancelledWork } from './refuse.ts';

const killAfterMs = 2_000;

export type DecodedFrames = {
  /** Everything after the program's name; raw frames have to go to `pipe:1`. */
  readonly args: readonly string[];
  /** Bytes of one frame; whatever is left over at the end is dropped. */
  readonly frameBytes: number;
  /** `shared`: every frame comes in the same bytes, to be done with before the next is asked for. */
  readonly bytes?: 'own' | 'shared' | undefined;
  readonly signal?: AbortSignal | undefined;
};

/**
 * Runs ffmpeg and gives what it writes to its output, cut into frames of one size. Nothing is held but the frame in hand:
 * ffmpeg waits until it is asked for more. Returns the error it ended with, if any; throws `cancelled`.
 */
export async function* decodedFrames(
  program: string,
  { args, frameBytes, bytes: whose = 'own', signal }: DecodedFrames,
): AsyncGenerator<Uint8Array, Error | null, void> {
  const stopped = () => signal?.aborted === true;
  if (stopped()) throw cancelledWork();
  const ffmpeg = spawn(program, args, { stdio: ['ignore', 'pipe', 'pipe'], windowsHide: true });
  const errors: string[] = [];
  ffmpeg.stderr.setEncoding('utf8').on('data', (text: string) => {
    if (errors.length < 20) errors.push(text);
  });
  const ended = new Promise<Error | null>((resolve) => {
    ffmpeg.on('error', resolve);
    ffmpeg.on('close', () => resolve(null));
  });
  let killTimer: NodeJS.Timeout | undefined;
  const stop = () => {
    ffmpeg.kill('SIGTERM');
    killTimer ??= setTimeout(() => ffmpeg.kill('SIGKILL'), killAfterMs);
  };
  signal?.addEventListener('abort', stop, { once: true });
  try {
    for await (const bytes of wholeFrames(ffmpeg.stdout, frameBytes, whose)) {
      if (stopped()) throw cancelledWork();
      yield bytes;
    }
    const failure = await ended;
    if (stopped()) throw cancelledWork();
    const complaint = errors.join('').trim();
    return failure ?? (complaint === '' ? null : new Error(complaint));
  } finally {
    signal?.removeEventListener('abort', stop);
    if (ffmpeg.exitCode === null && ffmpeg.signalCode === null) stop();
    await ended;
    clearTimeout(killTimer);
  }
}

async function* wholeFrames(
  stream: Readable,
  size: number,
  whose: 'own' | 'shared',
): AsyncGenerator<Uint8Array, void, void> {
  let frame = new Uint8Array(size);
  let filled = 0;
  for await (const chunk of stream as AsyncIterable<Uint8Array>) {
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
  }
}
