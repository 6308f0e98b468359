import { CameraFollower } from '../../../engine/motion/camera/cameraFollower.ts';
import { PointFollower } from '../../../engine/motion/point/pointFollower.ts';
import type { PointRecording, Sighting } from '../../../engine/recording/recording.ts';
import type { Click } from '../../../engine/recording/setUp.ts';
import { type Warning, warning } from '../../../engine/recording/warnings.ts';
import { readPictures } from '../media/read/readPictures.ts';
import type { MediaTools } from '../media/tools/mediaTools.ts';
import { greyOf, longestLostFrames, readBackward, secondsOfFrame } from './greyFrames.ts';
import { currentMethods } from './methods.ts';
import type { TrackOptions } from './trackDisc.ts';

/**
 * Follows a clicked point through a clip: forward from each click to the next, and backward from the first. `point` null
 * when nothing was clicked.
 */
export async function trackPoint(
  tools: MediaTools,
  clip: string,
  { table, within, shown, clicks, signal, onProgress }: Omit<TrackOptions, 'alongside'>,
): Promise<{ point: PointRecording | null; warnings: Warning[] }> {
  const ordered = [...clicks].sort((one, other) => one.frame - other.frame);
  const first = ordered[0];
  if (!first) return { point: null, warnings: [] };
  const frames: (Sighting | null)[] = table.ticks.map(() => null);
  const camera = new CameraFollower(shown);
  let follower: PointFollower | null = null;
  const reading = { table, within, shown, planes: 'grey', signal } as const;
  for await (const { frame, bytes } of readPictures(tools, clip, reading)) {
    const picture = greyOf(bytes, shown);
    const atS = secondsOfFrame(table, frame);
    camera.next(picture);
    const click = ordered.findLast((one) => one.frame === frame);
    if (click) follower = new PointFollower(picture, click.at, atS);
    frames[frame] = click ? { ...click.at, confidence: 1 } : (follower?.follow(picture, atS) ?? null);
    onProgress?.((frame + 1) / table.ticks.length);
  }
  await followBack(tools, clip, { table, within, shown, signal, click: first, frames });
  const lost = frames.filter((frame) => frame === null).length;
  const warnings = lost > frames.length * 0.1 ? [warning('pointLost', { lost, frames: frames.length })] : [];
  return { point: { method: currentMethods.point, frames, camera: camera.finish() }, warnings };
}

async function followBack(
  tools: MediaTools,
  clip: string,
  {
    table,
    within,
    shown,
    signal,
    click,
    frames,
  }: Pick<TrackOptions, 'table' | 'within' | 'shown' | 'signal'> & {
    readonly click: Click;
    readonly frames: (Sighting | null)[];
  },
): Promise<void> {
  if (click.frame === 0) return;
  const range = { firstFrame: 0, lastFrame: click.frame };
  let follower: PointFollower | null = null;
  const reading = { table, within, shown, planes: 'grey', signal, ...range } as const;
  for await (const { frame, bytes } of readBackward(tools, clip, reading)) {
    const picture = greyOf(bytes, shown);
    const atS = secondsOfFrame(table, frame);
    if (frame === click.frame) follower = new PointFollower(picture, click.at, atS);
    else frames[frame] = follower?.follow(picture, atS) ?? null;
    if (follower && follower.missed > longestLostFrames) return;
  }
}
