import type { CameraPath, PointPx } from '../../recording/recording.ts';
import { steadied } from '../camera/cameraPath.ts';
import { bodyHeightPx, leastConfidence } from '../joints/lifter.ts';
import { type Bodies, jointOf, otherSide, type Part, type Side } from '../joints/points.ts';
import { type Sample, withoutJumps } from '../joints/smoothPoints.ts';
import { swappedSides } from '../joints/swappedSides.ts';

/** One joint of one side through a clip, in the first frame's pixels; null where it was not seen. */
export type JointSeries = {
  readonly part: Part;
  readonly side: Side;
  readonly points: readonly (PointPx | null)[];
  /** How far off each may be because the network was unsure of it (one standard deviation), in pixels. */
  readonly unsurePx: readonly number[];
};

/** A jump of a joint against its neighbours in time, in body heights. */
const leastJump = 0.08;
/**
 * A joint is as good as it gets from this confidence on; below it, what the network says strays by so much of the lifter's
 * height for the whole of the confidence: measured on rendered lifters whose joints are known.
 */
const unsure = { below: 0.5, ofHeight: 0.1 } as const;
const parts = ['nose', 'ear', 'shoulder', 'elbow', 'wrist', 'hip', 'knee', 'ankle'] as const;

/** Every joint of both sides through a clip, with the camera's movement taken out, sides put right and jumps left out. */
export function jointSeriesOf(
  bodies: Bodies,
  {
    timesS,
    camera,
    pictureHeightPx,
  }: { readonly timesS: readonly number[]; readonly camera: CameraPath | null; readonly pictureHeightPx: number },
): readonly JointSeries[] {
  const heightPx = bodyHeightPx(bodies) ?? pictureHeightPx / 2;
  const swapped = swappedSides(bodies, { timesS, heightPx });
  const seriesOf = (part: Part, side: Side): JointSeries => {
    const seen = bodies.frames.flatMap((body, frame): readonly FrameSample[] => {
      const atS = timesS[frame];
      if (body === null || atS === undefined) return [];
      const joint = jointOf(body, part, swapped(frame, part) ? otherSide(side) : side);
      return joint.confidence < leastConfidence
        ? []
        : [{ ...steadied(camera, frame, joint), confidence: joint.confidence, atS, frame }];
    });
    const points: (PointPx | null)[] = bodies.frames.map(() => null);
    const unsurePx = bodies.frames.map(() => 0);
    for (const { frame, xPx, yPx, confidence } of withoutJumps(seen, leastJump * heightPx)) {
      points[frame] = { xPx, yPx };
      unsurePx[frame] = Math.max(0, unsure.below - confidence) * unsure.ofHeight * heightPx;
    }
    return { part, side, points, unsurePx };
  };
  return parts.flatMap((part) =>
    part === 'nose' ? [seriesOf(part, 'left')] : [seriesOf(part, 'left'), seriesOf(part, 'right')],
  );
}

type FrameSample = Sample & { readonly frame: number; readonly confidence: number };
