import { spawn } from 'node:child_process';
import type { Readable } from 'node:stream';
import { frameStartUs, seekTargetUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { cancelledWork, refuseClip } from './refuse.ts';
import { fileAddress, safeInputOptions } from './safeInput.ts';
import type { MediaTools } from './tools.ts';
import { passthroughOptions } from './toolVersion.ts';
import type { PictureSize } from './upright.ts';

const killAfterMs = 2_000;

export type ReadOptions = {
  readonly table: FrameTable;
  /** Size of the upright picture; what is read has this size, or that of `shrinkTo`. */
  readonly shown: PictureSize;
  /** `grey`: a byte a pixel. `colour`: the grey plane, then the two colour differences at half width and height. */
  readonly planes: 'grey' | 'colour';
  /** Frames from here … */
  readonly firstFrame?: number;
  /** … up to and with this one. */
  readonly lastFrame?: number;
  readonly shrinkTo?: PictureSize;
  /** `shared`: every picture comes in the same bytes, to be done with before the next is asked for. */
  readonly bytes?: 'own' | 'shared';
  readonly signal?: AbortSignal | undefined;
};

/** A decoded frame: its number in the clip's table, and its bytes, rows from the top, upright. */
export type ReadPicture = { readonly frame: number; readonly bytes: Uint8Array };

/**
 * Decodes frames in order, each exactly once under its number in the table. Nothing is held but the frame in hand:
 * ffmpeg waits until it is asked for more. Throws `cancelled`, or `bad-media` when fewer frames come than the table has.
 */
export async function* readPictures(
  tools: MediaTools,
  clip: string,
  options: ReadOptions,
): AsyncGenerator<ReadPicture, void, void> {
  const { table, signal } = options;
  const firstFrame = options.firstFrame ?? 0;
  const lastFrame = Math.min(options.lastFrame ?? table.ticks.length - 1, table.ticks.length - 1);
  if (lastFrame < firstFrame) return;
  const stopped = () => signal?.aborted === true;
  if (stopped()) throw cancelledWork();
  const ffmpeg = spawn(tools.ffmpeg.path, argumentsFor(tools, clip, options, { firstFrame, lastFrame }), {
    stdio: ['ignore', 'pipe', 'pipe'],
    windowsHide: true,
  });
  const errors: string[] = [];
  ffmpeg.stderr.setEncoding('utf8').on('data', (text: string) => {
    if (errors.length < 20) errors.push(text);
  });
  const failed = new Promise<Error | null>((resolve) => {
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
    let frame = firstFrame;
    for await (const bytes of wholePictures(ffmpeg.stdout, {
      size: bytesOf(options),
      shared: options.bytes === 'shared',
    })) {
      if (stopped()) throw cancelledWork();
      yield { frame, bytes };
      frame += 1;
    }
    const failure = await failed;
    if (stopped()) throw cancelledWork();
    if (frame <= lastFrame) {
      const cause = failure ?? new Error(errors.join('').trim() || 'ffmpeg ended early');
      throw refuseClip(
        clip,
        `has ${table.ticks.length} frames, of which number ${frame + 1} could not be decoded`,
        'copy it again from where it was filmed, or save it again as MP4',
        cause,
      );
    }
  } finally {
    signal?.removeEventListener('abort', stop);
    if (ffmpeg.exitCode === null && ffmpeg.signalCode === null) stop();
    await failed;
    clearTimeout(killTimer);
  }
}

async function* wholePictures(
  stream: Readable,
  { size, shared }: { readonly size: number; readonly shared: boolean },
): AsyncGenerator<Uint8Array, void, void> {
  let picture = new Uint8Array(size);
  let filled = 0;
  for await (const chunk of stream as AsyncIterable<Uint8Array>) {
    let used = 0;
    while (used < chunk.length) {
      const taken = Math.min(chunk.length - used, size - filled);
      picture.set(chunk.subarray(used, used + taken), filled);
      used += taken;
      filled += taken;
      if (filled < size) continue;
      yield picture;
      if (!shared) picture = new Uint8Array(size);
      filled = 0;
    }
  }
}

/** Bytes of one picture as it is read. */
export function bytesOf({ planes, shown, shrinkTo }: Pick<ReadOptions, 'planes' | 'shown' | 'shrinkTo'>): number {
  const { width, height } = shrinkTo ?? shown;
  const half = Math.ceil(width / 2) * Math.ceil(height / 2);
  return width * height + (planes === 'colour' ? 2 * half : 0);
}

function argumentsFor(
  tools: MediaTools,
  clip: string,
  { table, shown, planes, shrinkTo }: ReadOptions,
  { firstFrame, lastFrame }: { readonly firstFrame: number; readonly lastFrame: number },
): string[] {
  const { width, height } = shrinkTo ?? shown;
  const from = firstFrame === 0 ? [] : ['-ss', secondsBefore(table, firstFrame)];
  const filters = [
    // Of two frames with the same time only one can be seen, and the table holds one.
    'select=isnan(prev_selected_pts)+gt(pts\\,prev_selected_pts)',
    `scale=${width}:${height}:flags=${shrinkTo ? 'area' : 'bilinear'}`,
    `format=${planes === 'grey' ? 'gray' : 'yuv420p'}`,
  ];
  return [
    ...['-hide_banner', '-v', 'error', '-nostdin'],
    ...safeInputOptions,
    ...from,
    ...['-i', fileAddress(clip)],
    ...['-map', '0:v:0', '-an', '-sn', '-dn', '-vf', filters.join(',')],
    ...passthroughOptions(tools.ffmpeg.version),
    ...['-frames:v', String(lastFrame - firstFrame + 1), '-f', 'rawvideo', 'pipe:1'],
  ];
}

/** A moment after which the frame is the first to appear, in seconds from the clip's first frame. */
function secondsBefore(table: FrameTable, frame: number): string {
  const us = seekTargetUs(table, frame - 1) - frameStartUs(table, 0);
  return (us / 1_000_000).toFixed(6);
}
