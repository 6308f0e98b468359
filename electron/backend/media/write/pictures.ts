import type { WorkOptions } from '../probe/probeClip.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { runFfmpeg } from '../tools/runFfmpeg.ts';

/** Longest side of a poster, in pixels. */
const posterPx = 960;
/** Above this length only key frames are decoded for the filmstrip: ten times faster, and near enough for pictures this small. */
const decodeAllUpToUs = 120_000_000;

export type PosterOptions = WorkOptions & {
  /** Media time of the picture, counted from the first frame. */
  readonly atUs: number;
};

export type FilmstripOptions = WorkOptions & {
  /** How many pictures stand side by side: one for the middle of each equal part of the clip. */
  readonly pictures: number;
  readonly heightPx: number;
  readonly durationUs: number;
  /** Called with the share done, 0-1. */
  readonly onProgress?: (share: number) => void;
};

/** Writes one upright picture of a clip as JPEG. */
export function makePoster(
  tools: MediaTools,
  clip: string,
  output: string,
  { atUs, signal }: PosterOptions,
): Promise<void> {
  const fit = `scale=w='min(iw,${posterPx})':h='min(ih,${posterPx})':force_original_aspect_ratio=decrease`;
  return runFfmpeg(tools, {
    input: clip,
    inputOptions: ['-ss', seconds(atUs)],
    output,
    outputOptions: ['-map', '0:v:0', '-an', '-frames:v', '1', '-vf', `${fit},format=yuvj420p`, ...jpeg],
    writes: 'mjpeg',
    signal,
  });
}

/** Writes a clip's pictures side by side as one JPEG, in time order. */
export async function makeFilmstrip(
  tools: MediaTools,
  clip: string,
  output: string,
  { pictures, heightPx, durationUs, onProgress, signal }: FilmstripOptions,
): Promise<void> {
  onProgress?.(0);
  const slotS = durationUs / pictures / 1_000_000;
  // The picture on the screen at the middle of each slot: times are moved half a slot back, then rounded up to slots.
  const filters = [
    `setpts=PTS-STARTPTS-${(slotS / 2).toFixed(6)}/TB`,
    `fps=fps=${pictures * 1_000_000}/${durationUs}:start_time=0:round=up`,
    `scale=-2:${heightPx}`,
    'setsar=1',
    `tile=${pictures}x1`,
    'format=yuvj420p',
  ];
  await runFfmpeg(tools, {
    input: clip,
    inputOptions: durationUs > decodeAllUpToUs ? ['-skip_frame', 'nokey'] : [],
    output,
    outputOptions: ['-map', '0:v:0', '-an', '-frames:v', '1', '-vf', filters.join(','), ...jpeg],
    writes: 'mjpeg',
    signal,
  });
  onProgress?.(1);
}

const jpeg: readonly string[] = ['-c:v', 'mjpeg', '-q:v', '4', '-map_metadata', '-1'];

function seconds(us: number): string {
  return (Math.max(0, us) / 1_000_000).toFixed(6);
}
