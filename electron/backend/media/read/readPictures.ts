import { seenPart, seenSize } from '../../../../engine/framing/picturePlaces.ts';
import { frameStartUs, seekTargetUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { ProblemError } from '../../../contract/reply.ts';
import type { PictureSize, UprightPicture } from '../probe/streams.ts';
import { type MediaTools, passthroughOptions } from '../tools/mediaTools.ts';
import { refuseClip } from '../tools/refuse.ts';
import { fileAddress, safeInputOptions } from '../tools/safeInput.ts';
import { canBeginInside } from './beginInside.ts';
import { decodedFrames } from './decodedFrames.ts';
import { type Look, lightOf, partSeen, turned } from './lookFilters.ts';

export type ReadOptions = {
  readonly table: FrameTable;
  /** Where the table is that of a part of the file's frames: the file's own, and which of its frames is the table's first. */
  readonly within?: { readonly table: FrameTable; readonly firstFrame: number } | undefined;
  /** The upright picture; what is read has its size, or that of `shrinkTo`. */
  readonly shown: UprightPicture;
  /** What is read has the size of what is seen, or that of `shrinkTo`. */
  readonly look?: Look | undefined;
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
  const decoded = decodedFrames(tools, {
    args: argumentsFor(tools, clip, options, { firstFrame, lastFrame, seeks: await canBeginInside(clip) }),
    frameBytes: bytesOf(options),
    bytes: options.bytes,
    signal,
  });
  let frame = firstFrame;
  let next = await decoded.next();
  try {
    for (; next.done !== true; next = await decoded.next()) {
      yield { frame, bytes: next.value };
      frame += 1;
    }
  } finally {
    await decoded.return(null);
  }
  if (frame <= lastFrame) throw undecodedFrame(clip, table, { frame, cause: next.value });
}

/** The refusal of a clip of whose table a frame did not come. */
export function undecodedFrame(
  clip: string,
  table: FrameTable,
  { frame, cause }: { readonly frame: number; readonly cause: Error | null },
): ProblemError {
  return refuseClip(
    clip,
    'frameLost',
    { frames: table.ticks.length, frame: frame + 1 },
    cause ?? new Error('ffmpeg ended early'),
  );
}

type SizeOptions = Pick<ReadOptions, 'planes' | 'shown' | 'look' | 'shrinkTo'>;

const sizeRead = (shown: PictureSize, look: Look | undefined): PictureSize =>
  look === undefined ? shown : seenSize(seenPart(shown, look));

/** Bytes of one picture as it is read. */
export function bytesOf({ planes, shown, look, shrinkTo }: SizeOptions): number {
  const { width, height } = shrinkTo ?? sizeRead(shown, look);
  const half = Math.ceil(width / 2) * Math.ceil(height / 2);
  return width * height + (planes === 'colour' ? 2 * half : 0);
}

function argumentsFor(
  tools: MediaTools,
  clip: string,
  { table, within = { table, firstFrame: 0 }, shown, look, planes, shrinkTo }: ReadOptions,
  {
    firstFrame,
    lastFrame,
    seeks,
  }: { readonly firstFrame: number; readonly lastFrame: number; readonly seeks: boolean },
): string[] {
  const { width, height } = shrinkTo ?? sizeRead(shown, look);
  const first = within.firstFrame + firstFrame;
  const from = first === 0 || !seeks ? [] : ['-ss', secondsBefore(within.table, first)];
  const filters = [
    // Of two frames with the same time only one can be seen, and the table holds one.
    'select=isnan(prev_selected_pts)+gt(pts\\,prev_selected_pts)',
    ...(first === 0 || seeks ? [] : [`select=gte(n\\,${first})`]),
    ...turned(shown),
    ...partSeen(shown, look),
    // Newer builds would leave the full range of some phones as it is.
    `scale=${width}:${height}:flags=${shrinkTo ? 'area' : 'bilinear'}${planes === 'grey' ? '' : ':out_range=tv'}`,
    `format=${planes === 'grey' ? 'gray' : 'yuv420p'}`,
    ...lightOf(look),
  ];
  return [
    ...['-hide_banner', '-v', 'error', '-nostdin'],
    ...safeInputOptions,
    ...from,
    ...['-i', fileAddress(clip)],
    ...['-map', '0:v:0', '-an', '-sn', '-dn', '-vf', filters.join(',')],
    ...passthroughOptions(tools.ffmpeg.version),
    ...[
      '-frames:v',
      String(lastFrame - firstFrame + 1),
      '-c:v',
      'rawvideo',
      '-f',
      'fifo',
      '-fifo_format',
      'rawvideo',
      '-queue_size',
      '12',
      'pipe:1',
    ],
  ];
}

/** A moment after which the frame is the first to appear, in seconds from the clip's first frame. */
export function secondsBefore(table: FrameTable, frame: number): string {
  const us = seekTargetUs(table, frame - 1) - frameStartUs(table, 0);
  return (us / 1_000_000).toFixed(6);
}

export type ChosenOptions = {
  readonly table: FrameTable;
  /** The frames wanted, in any order; each comes once. */
  readonly frames: readonly number[];
  /** Size of the pictures that come. */
  readonly size: PictureSize;
  /** The upright picture and what is seen of it; without it, all of the picture as the file shows it. */
  readonly from?: { readonly shown: UprightPicture; readonly look?: Look | undefined } | undefined;
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
  { table, frames, size, from, signal }: ChosenOptions,
): AsyncGenerator<ReadPicture, void, void> {
  const decoded = decodedFrames(tools, {
    args: argumentsForChosen(tools, clip, { table, frames, size, from }, await canBeginInside(clip)),
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

function argumentsForChosen(
  tools: MediaTools,
  clip: string,
  { table, frames, size, from }: ChosenOptions,
  seeks: boolean,
): string[] {
  const first = seeks ? (frames[0] ?? 0) : 0;
  const filters = [
    // Of two frames with the same time only one can be seen, and the table holds one.
    'select=isnan(prev_selected_pts)+gt(pts\\,prev_selected_pts)',
    `select=${frames.map((frame) => `eq(n\\,${frame - first})`).join('+')}`,
    ...(from === undefined ? [] : [...turned(from.shown), ...partSeen(from.shown, from.look)]),
    `scale=${size.width}:${size.height}:flags=area:out_range=tv`,
    'format=yuv420p',
    ...lightOf(from?.look),
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
