import type { CameraPath, PointPx } from '../../recording/recording.ts';
import { type Facing, forward } from './angles.ts';
import { plantedAnkle } from './legs.ts';
import { bodyHeightPx, facingOf } from './lifter.ts';
import {
  type DiscInFront,
  type NearSide,
  nearJoints,
  type PictureSize,
  swappedSides,
  type Visibility,
} from './nearSide.ts';
import { type Bodies, forParts, type Part } from './points.ts';
import { type Sample, smoothPlaces, withoutJumps } from './smoothPlaces.ts';

export type BodyInput = {
  readonly joints: Bodies;
  /** Media seconds of each frame. */
  readonly timesS: readonly number[];
  /** The coach's word; null = as the joints tell. */
  readonly facing: Facing | null;
  readonly disc: DiscInFront | null;
  readonly camera: CameraPath | null;
  readonly picture: PictureSize;
  /** How far upright things lean in the first frame, + = their tops to the right; 0 when unknown. */
  readonly rollDeg: number;
};

/** The side of the lifter that faces the camera through a clip. */
export type BodyTrack = {
  readonly facing: Facing;
  /** Who faces right shows the right side. */
  readonly nearSide: Facing;
  /** Standing height in pixels. */
  readonly heightPx: number;
  readonly timesS: readonly number[];
  readonly disc: DiscInFront | null;
  readonly picture: PictureSize;
  /** Smoothed; null where nothing was seen for too long. What the disc hides is the network's guess. */
  readonly places: Readonly<Record<Part, readonly (PointPx | null)[]>>;
  /** Whether what `places` has was seen; of frames that were not looked at, the nearest one's. */
  readonly visibility: Readonly<Record<Part, readonly Visibility[]>>;
  /** Where the ankle stands, when the foot does not move through the clip. */
  readonly planted: ((frame: number) => PointPx) | null;
  /** How far upright things lean in a frame, + = their tops the way the lifter faces. */
  readonly tiltDeg: (frame: number) => number;
};

/** A jump of a joint against its neighbours in time, in body heights. */
const leastJump = 0.06;

/**
 * Puts the raw joints of a clip in order: which way the lifter faces, left and right unmixed, jumps left out, the rest smoothed
 * over time. Null when nobody is seen, or neither the joints nor the coach tell the way the lifter faces.
 */
export function trackBody({ joints, timesS, facing, disc, camera, picture, rollDeg }: BodyInput): BodyTrack | null {
  const faces = facing ?? facingOf(joints);
  const heightPx = bodyHeightPx(joints);
  if (faces === null || heightPx === null) return null;
  const swapped = swappedSides(joints.frames, heightPx);
  const near = nearJoints(joints, { side: faces, swapped, disc, picture });
  return {
    facing: faces,
    nearSide: faces,
    heightPx,
    timesS,
    disc,
    picture,
    places: forParts((part) => smoothPlaces(withoutJumps(samplesOf(near, part, timesS), leastJump * heightPx), timesS)),
    visibility: forParts((part) => visibilityThrough(near, part, timesS.length)),
    planted: plantedAnkle(near.ankle, { heightPx, camera }),
    tiltDeg: (frame) => forward(faces) * (rollDeg - (camera?.frames[frame]?.turnDeg ?? 0)),
  };
}

/** What is seen, and what the disc hides; without the rest there is less, and nothing made up. */
function samplesOf(near: NearSide, part: Part, timesS: readonly number[]): readonly Sample[] {
  return near[part].flatMap((joint, frame) => {
    const atS = timesS[frame];
    if (joint === null || atS === undefined) return [];
    const { place, visibility } = joint;
    return visibility === 'seen' || visibility === 'behindDisc' ? [{ xPx: place.xPx, yPx: place.yPx, atS }] : [];
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
