import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { PictureSize } from '../probe/upright.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { fileAddress, safeInputOptions } from '../tools/safeInput.ts';
import { passthroughOptions } from '../tools/toolVersion.ts';
import { decodedFrames } from './decodedFrames.ts';
import { bytesOf, type ReadPicture, secondsBefore, undecodedFrame } from './readPictures.ts';

export type ChosenOptions = {
  readonly table: FrameTable;
  /** The frames wanted, in any order; each comes once. */
  readonly frames: readonly number[];
  /** Size of the pictures that come. */
  readonly size: PictureSize;
  readonly signal?: AbortSignal | undefined;
};

/** As many frames as one run is asked for: command lines have an end. */
const mostInRun = 400;

/**
 * Decodes single frames of a clip, rising, in one run of ffmpeg for hundreds of them: upright, `yuv420p` planes in
 * limited range. Throws `cancelled`, or `bad-media` when one of them can't be decoded.
 */
export async function* readChosenPictures(
  tools: MediaTools,
  clip: string,
  options: ChosenOptions,
): AsyncGenerator<ReadPicture, void, void> {
  const rising = [...new Set(options.frames)].sort((one, other) => one - other);
  for (let from = 0; from < rising.length; from += mostInRun) {
    yield* readRun(tools, clip, { ...options, frames: rising.slice(from, from + mostInRun) });
  }
}

async function* readRun(
  tools: MediaTools,
  clip: string,
  { table, frames, size, signal }: ChosenOptions,
): AsyncGenerator<ReadPicture, void, void> {
  const decoded = decodedFrames(tools.ffmpeg.path, {
    args: argumentsFor(tools, clip, { table, frames, size }),
    frameBytes: bytesOf({ planes: 'colour', shown: size }),
    signal,
  });
  const left = [...frames];
  let next = await decoded.next();
  try {
    for (; next.done !== true; next = await decoded.next()) {
      const frame = left.shift();
      if (frame === undefined) return;
      yield { frame, bytes: next.value };
    }
  } finally {
    await decoded.return(null);
  }
  const missing = left[0];
  if (missing !== undefined) throw undecodedFrame(clip, table, { frame: missing, cause: next.value });
}

function argumentsFor(tools: MediaTools, clip: string, { table, frames, size }: ChosenOptions): string[] {
  const first = frames[0] ?? 0;
  const filters = [
    // Of two frames with the same time only one can be seen, and the table holds one.
    'select=isnan(prev_selected_pts)+gt(pts\\,prev_selected_pts)',
    `select=${frames.map((frame) => `eq(n\\,${frame - first})`).join('+')}`,
    `scale=${size.width}:${size.height}:flags=area:out_range=tv`,
    'format=yuv420p',
  ];
  return [
    ...['-hide_banner', '-v', 'error', '-nostdin'],
    ...safeInputOptions,
    ...(first === 0 ? [] : ['-ss', secondsBefore(table, first)]),
    ...['-i', fileAddress(clip)],
    ...['-map', '0:v:0', '-an', '-sn', '-dn', '-vf', filters.join(',')],
    ...passthroughOptions(tools.ffmpeg.version),
    ...['-frames:v', String(frames.length), '-f', 'rawvideo', 'pipe:1'],
  ];
}
