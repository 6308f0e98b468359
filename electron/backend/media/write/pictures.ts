import type { WorkOptions } from '../probe/probeClip.ts';
import type { UprightPicture } from '../probe/streams.ts';
import { canBeginInside } from '../read/beginInside.ts';
import { type Look, lightOf, partSeen, turned } from '../read/lookFilters.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { runFfmpeg } from '../tools/runFfmpeg.ts';

/** Longest side of a poster, in pixels. */
const posterPx = 960;
export const filmstripHeightPx = 72;

/** How many pictures a filmstrip has: about one a second, enough to find one's way, few enough for a picture that decoders still take. */
export const picturesIn = (durationUs: number): number => Math.min(60, Math.max(8, Math.round(durationUs / 1_000_000)));

/** Above this length only key frames are decoded for the filmstrip: ten times faster, and near enough for pictures this small. */
const decodeAllUpToUs = 120_000_000;

/** How a clip shows its footage; as filmed without. */
type Shown = { readonly shown: UprightPicture; readonly look: Look };

export type PosterOptions = WorkOptions & {
  readonly as?: Shown | undefined;
  /** Media time of the picture, counted from the first frame. */
  readonly atUs: number;
};

export type FilmstripOptions = WorkOptions & {
  readonly as?: Shown | undefined;
  /** Where it begins, in media microseconds from the first frame; 0 without. */
  readonly fromUs?: number;
  /** How many pictures stand side by side: one for the middle of each equal part of its time. */
  readonly pictures: number;
  readonly heightPx: number;
  readonly durationUs: number;
  /** Called with the share done, 0-1. */
  readonly onProgress?: (share: number) => void;
};

/** Writes one upright picture of a clip as JPEG. */
export async function makePoster(
  tools: MediaTools,
  clip: string,
  output: string,
  { as, atUs, signal }: PosterOptions,
): Promise<void> {
  const fit = `scale=w='min(iw,${posterPx})':h='min(ih,${posterPx})':force_original_aspect_ratio=decrease`;
  const from = await beginningAt(clip, atUs);
  const filters = [...from.filters, framed(as, [fit])];
  await runFfmpeg(tools, {
    input: clip,
    inputOptions: from.options,
    output,
    outputOptions: ['-map', '0:v:0', '-an', '-frames:v', '1', '-vf', filters.join(','), ...jpeg],
    writes: 'mjpeg',
    signal,
  });
}

/** Writes a clip's pictures side by side as one JPEG, in time order. */
export async function makeFilmstrip(
  tools: MediaTools,
  clip: string,
  output: string,
  { as, pictures, heightPx, fromUs = 0, durationUs, onProgress, signal }: FilmstripOptions,
): Promise<void> {
  onProgress?.(0);
  const slotS = durationUs / pictures / 1_000_000;
  // The picture on the screen at the middle of each slot: times are moved half a slot back, then rounded up to slots.
  const inTime = [
    `setpts=PTS-STARTPTS-${(slotS / 2).toFixed(6)}/TB`,
    `fps=fps=${pictures * 1_000_000}/${durationUs}:start_time=0:round=up`,
  ];
  const from = await beginningAt(clip, fromUs);
  const sideBySide = [`scale=-2:${heightPx}`, 'setsar=1', `tile=${pictures}x1`];
  await runFfmpeg(tools, {
    input: clip,
    inputOptions: [
      ...(durationUs > decodeAllUpToUs ? ['-skip_frame', 'nokey'] : []),
      ...from.options,
      ...(as === undefined ? [] : ['-t', seconds(from.filters.length === 0 ? durationUs : fromUs + durationUs)]),
    ],
    output,
    outputOptions: [
      '-map',
      '0:v:0',
      '-an',
      '-frames:v',
      '1',
      '-vf',
      [...from.filters, ...inTime, framed(as, sideBySide)].join(','),
      ...jpeg,
    ],
    writes: 'mjpeg',
    signal,
  });
  onProgress?.(1);
}

/** Options and filters that begin a clip at a moment. */
async function beginningAt(clip: string, atUs: number) {
  if (atUs <= 0) return { options: [], filters: [] };
  const start = seconds(atUs);
  return (await canBeginInside(clip))
    ? { options: ['-ss', start], filters: [] }
    : { options: [], filters: [`trim=start=${start}`] };
}

/** Filters that show the footage as a clip does, then the others, in the full range of a JPEG. */
function framed(as: Shown | undefined, filters: readonly string[]): string {
  const { shown, look } = as ?? {};
  const light = lightOf(look);
  return [
    ...(shown === undefined ? [] : [...turned(shown), ...partSeen(shown, look)]),
    ...filters,
    ...(light.length === 0 ? [] : ['scale=out_range=tv', 'format=yuv420p', ...light]),
    'format=yuvj420p',
  ].join(',');
}

const jpeg: readonly string[] = ['-c:v', 'mjpeg', '-q:v', '4', '-map_metadata', '-1'];

function seconds(us: number): string {
  return (Math.max(0, us) / 1_000_000).toFixed(6);
}
