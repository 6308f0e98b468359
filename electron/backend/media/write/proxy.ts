import { rm } from 'node:fs/promises';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import { probeClip, type WorkOptions } from '../probe/probeClip.ts';
import { keptTimes, type MediaTools } from '../tools/mediaTools.ts';
import { refuseClip } from '../tools/refuse.ts';
import { runFfmpeg } from '../tools/runFfmpeg.ts';

export type ProxyOptions = WorkOptions & {
  /** The clip's own frame table. */
  readonly table: FrameTable;
  /** Called with the share done, 0-1. */
  readonly onProgress?: (share: number) => void;
};

/**
 * Writes a playable copy of a clip, frame for frame: H.264 with a key frame every 12 frames and no B-frames, so that
 * stepping is smooth; upright, at most 1080p. Returns the copy's own frame table, frame `i` of one being frame `i`
 * of the other. Throws `bad-media` when the copy's frames do not match one to one.
 */
export async function makeProxy(
  tools: MediaTools,
  clip: string,
  output: string,
  { table, onProgress, signal }: ProxyOptions,
): Promise<FrameTable> {
  const total = table.ticks.length;
  await runFfmpeg(tools, {
    input: clip,
    inputOptions: [],
    output,
    outputOptions: [
      '-map',
      '0:v:0',
      '-map',
      '0:a:0?',
      ...pictureOptions(tools, table),
      ...soundOptions,
      ...fileOptions,
    ],
    writes: 'mp4',
    onFrames: (frames) => onProgress?.(Math.min(1, frames / total)),
    signal,
  });
  const { table: playback } = await probeClip(tools, output, { signal });
  if (playback.ticks.length !== total) {
    await rm(output, { force: true });
    throw refuseClip(clip, 'playableCopyLost', { frames: total, decoded: playback.ticks.length });
  }
  return playback;
}

function pictureOptions(tools: MediaTools, { timeBase }: FrameTable): readonly string[] {
  const shrink = 'min(1\\,min(1920/max(iw\\,ih)\\,1080/min(iw\\,ih)))';
  const filters = [
    // Of two frames with the same time only one can be seen, and the table holds one.
    'select=isnan(prev_selected_pts)+gt(pts\\,prev_selected_pts)',
    `scale=w=trunc(iw*${shrink}/2)*2:h=trunc(ih*${shrink}/2)*2`,
    'format=yuv420p',
  ];
  return [
    ...['-vf', filters.join(',')],
    ...['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '20', '-g', '12'],
    ...keptTimes(tools.ffmpeg.version, timeBase),
  ];
}

const soundOptions: readonly string[] = ['-c:a', 'aac', '-b:a', '128k', '-ac', '2'];
const fileOptions: readonly string[] = ['-sn', '-map_metadata', '-1', '-map_chapters', '-1', '-movflags', '+faststart'];
