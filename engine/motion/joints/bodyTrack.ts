import type { CameraPath, PointPx } from '../../recording/recording.ts';
import { type Facing, forward } from './angles.ts';
import { plantedAnkle } from './legs.ts';
import { bodyHeightPx } from './lifter.ts';
import { type DiscInFront, type NearSide, nearJoints, type PictureSize, type Visibility } from './nearSide.ts';
import { type Bodies, forParts, type Part } from './points.ts';
import { type Sample, smoothPoints, withoutJumps } from './smoothPoints.ts';
import { swappedSides } from './swappedSides.ts';

export type BodyInput = {
  readonly joints: Bodies;
  /** Media seconds of each frame. */
  readonly timesS: readonly number[];
  readonly facing: Facing;
  readonly disc: DiscInFront | null;
  readonly camera: CameraPath | null;
  readonly picture: PictureSize;
  /** How far upright things lean in the first frame, + = their tops to the right; 0 when unknown. */
  readonly rollDeg: number;
};

/** The side of the lifter that faces the camera through a clip. */
export type BodyTrack = {
  readonly facing: Facing;
  /** A lifter who faces right shows the right side. */
  readonly nearSide: Facing;
  /** Standing height in pixels. */
  readonly heightPx: number;
  readonly timesS: readonly number[];
  readonly disc: DiscInFront | null;
  readonly picture: PictureSize;
  /** Smoothed; null where nothing was seen for too long. What the disc hides is the network's guess. */
  readonly points: Readonly<Record<Part, readonly (PointPx | null)[]>>;
  /** Whether what `points` has was seen; in a frame that was not looked at, as in the one before. */
  readonly visibility: Readonly<Record<Part, readonly Visibility[]>>;
  /** Where the ankle stands, when the foot does not move through the clip. */
  readonly planted: ((frame: number) => PointPx) | null;
  /** How far upright things lean in a frame, + = their tops the way the lifter faces. */
  readonly tiltDeg: (frame: number) => number;
};

/** A jump of a joint against its neighbours in time, in body heights. */
const leastJump = 0.06;

/**
 * Puts the raw joints of a clip in order for a lifter who faces a known way: tells left from right, drops jumps and smooths
 * the rest over time. Null when nobody is seen.
 */
export function trackBody({ joints, timesS, facing, disc, camera, picture, rollDeg }: BodyInput): BodyTrack | null {
  const heightPx = bodyHeightPx(joints);
  if (heightPx === null) return null;
  const swapped = swappedSides(joints, { timesS, heightPx });
  const near = nearJoints(joints, { side: facing, swapped, disc, picture });
  return {
    facing,
    nearSide: facing,
    heightPx,
    timesS,
    disc,
    picture,
    points: forParts((part) => smoothPoints(withoutJumps(samplesOf(near, part, timesS), leastJump * heightPx), timesS)),
    visibility: forParts((part) => visibilityThrough(near, part, timesS.length)),
    planted: plantedAnkle(near.ankle, { heightPx, camera }),
    tiltDeg: (frame) => forward(facing) * (rollDeg - (camera?.frames[frame]?.turnDeg ?? 0)),
  };
}

/** What is seen, and what the disc hides; the rest is left out rather than made up. */
function samplesOf(near: NearSide, part: Part, timesS: readonly number[]): readonly Sample[] {
  return near[part].flatMap((joint, frame) => {
    const atS = timesS[frame];
    if (joint === null || atS === undefined) return [];
    const { point, visibility } = joint;
    return visibility === 'seen' || visibility === 'behindDisc' ? [{ xPx: point.xPx, yPx: point.yPx, atS }] : [];
  });
}

function visibilityThrough(near: NearSide, part: Part, frames: number): readonly Visibility[] {
  const joints = near[part];
  let last: Visibility = joints.find((joint) => joint !== null)?.visibility ?? 'unclear';
  return Array.from({ length: frames }, (_, frame) => {
    last = joints[frame]?.visibility ?? last;
    return last;
  });
}
