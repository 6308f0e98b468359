import type { CameraPath, PointPx, Recording } from '../../recording/recording.ts';
import { leastConfidence } from '../joints/lifter.ts';
import { between, jointOf } from '../joints/points.ts';
import { smoothPoints } from '../joints/smoothPoints.ts';
import { quantile } from '../signal/quantile.ts';

/** Both feet, or shoulders, are seen in at least so many of the frames looked at. */
const leastSeen = 0.7;
/** Against feet that stand the shoulders go about as far as in the picture: by this share at least. Feet that hang go with them. */
const leastShareOfWay = 0.6;

/**
 * A camera's path read from the feet alone, where the background can't tell it: what stands on the floor stays where it was, so
 * whatever moves the feet in the picture is the camera. Shift only. Null where the feet are not seen, or hang and go along
 * with the lifter.
 */
export function feetCamera({ joints }: Recording, camera: CameraPath, timesS: readonly number[]): CameraPath | null {
  if (!joints) return null;
  const feet = middlesOf(joints.frames, 'ankle', timesS);
  const shoulders = middlesOf(joints.frames, 'shoulder', timesS);
  if (!feet || !shoulders) return null;
  const heights = (from: (frame: number) => number) =>
    spreadOf(shoulders.map((at, frame) => at && at.yPx - from(frame)));
  if (heights((frame) => feet[frame]?.yPx ?? Number.NaN) < leastShareOfWay * heights(() => 0)) return null;
  const first = feet.find((at) => at !== null);
  if (!first) return null;
  let last: PointPx = first;
  const frames = feet.map((at) => {
    last = at ?? last;
    return { shiftXPx: first.xPx - last.xPx, shiftYPx: first.yPx - last.yPx, turnDeg: 0, scale: 1 };
  });
  return { ...camera, removable: true, frames };
}

/** The middle between left and right through a clip, smoothed; null when it is seen too seldom. */
function middlesOf(
  bodies: NonNullable<Recording['joints']>['frames'],
  part: 'ankle' | 'shoulder',
  timesS: readonly number[],
): readonly (PointPx | null)[] | null {
  const samples = bodies.flatMap((body, frame) => {
    const atS = timesS[frame];
    if (body === null || atS === undefined) return [];
    const [left, right] = [jointOf(body, part, 'left'), jointOf(body, part, 'right')];
    const isSeen = Math.min(left.confidence, right.confidence) >= leastConfidence;
    return isSeen ? [{ ...between(left, right), atS }] : [];
  });
  const looked = bodies.filter((body) => body !== null).length;
  return samples.length < leastSeen * looked || samples.length < 3 ? null : smoothPoints(samples, timesS);
}

/** From low to high, without the outermost twentieths. */
function spreadOf(values: readonly (number | null)[]): number {
  const known = values.filter((value) => value !== null && !Number.isNaN(value)).map((value) => value ?? 0);
  return known.length === 0 ? 0 : quantile(known, 0.95) - quantile(known, 0.05);
}
