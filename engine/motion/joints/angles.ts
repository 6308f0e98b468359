import type { PointPx } from '../../recording/recording.ts';
import type { Measured } from '../measurement.ts';

/** Which way the lifter faces in the picture. */
export type Facing = 'left' | 'right';

/*
 * Angles of body segments in the picture, y downwards, in degrees. Conventions as in clinical goniometry and the ISB
 * recommendations (Wu & Cavanagh 1995; Wu et al. 2002, 2005): 0 = straight, upright or level.
 */

/** Bend at the middle of three points: 0 = they lie in one line, 180 = folded back. */
export function bendDeg(one: PointPx, middle: PointPx, other: PointPx): number {
  const toOne = { x: one.xPx - middle.xPx, y: one.yPx - middle.yPx };
  const toOther = { x: other.xPx - middle.xPx, y: other.yPx - middle.yPx };
  const across = toOne.x * toOther.y - toOne.y * toOther.x;
  const along = toOne.x * toOther.x + toOne.y * toOther.y;
  return 180 - degrees(Math.abs(Math.atan2(across, along)));
}

/** Lean of the line from a lower to an upper point against the upright, + = the way the lifter faces; −180 to 180. */
export function leanDeg(lower: PointPx, upper: PointPx, facing: Facing): number {
  return degrees(Math.atan2(forward(facing) * (upper.xPx - lower.xPx), lower.yPx - upper.yPx));
}

/**
 * The head's pitch against the trunk: direction from ear to nose, less the trunk's lean; + = chin further down. Of use only
 * as a change since another frame, because faces differ. The nose tells a nod better than the ear against the
 * shoulder, which hardly moves when the head turns about its own joint.
 */
export function headPitchDeg(
  head: { readonly ear: PointPx; readonly nose: PointPx },
  trunkLean: number,
  facing: Facing,
): number {
  return turned(leanDeg(head.ear, head.nose, facing) - trunkLean);
}

/** An angle brought into −180 to 180. */
export function turned(angleDeg: number): number {
  return angleDeg - 360 * Math.round(angleDeg / 360);
}

/** +1 when the lifter faces the picture's right, −1 for the left. */
export const forward = (facing: Facing): 1 | -1 => (facing === 'right' ? 1 : -1);

export const degrees = (radians: number): number => (radians * 180) / Math.PI;
export const radians = (angleDeg: number): number => (angleDeg * Math.PI) / 180;

/** Three points along the back: seat, middle, shoulders. */
export type BackPoints = readonly [PointPx, PointPx, PointPx];

/** A click is off by no more than this nine times in ten. */
const clickPx = 2;

/**
 * How much rounder the back is than in an earlier frame, in degrees: change of the angle at the middle of three points;
 * + = rounder (the middle goes backward), − = more arched. Joints alone can't tell this.
 */
export function backChangeDeg(earlier: BackPoints, later: BackPoints, facing: Facing): Measured {
  return {
    value: turned(roundnessDeg(later, facing) - roundnessDeg(earlier, facing)),
    plusMinus: Math.hypot(clickErrorDeg(earlier), clickErrorDeg(later)),
  };
}

/** Turn from the lower to the upper line; + = the upper one leans further forward. */
function roundnessDeg([seat, middle, shoulders]: BackPoints, facing: Facing): number {
  const direction = (from: PointPx, to: PointPx) =>
    Math.atan2(forward(facing) * (to.xPx - from.xPx), from.yPx - to.yPx);
  return turned(degrees(direction(middle, shoulders) - direction(seat, middle)));
}

/** Each click turns its line; the middle one turns both. */
function clickErrorDeg([seat, middle, shoulders]: BackPoints): number {
  const lower = 1 / Math.max(1, Math.hypot(middle.xPx - seat.xPx, middle.yPx - seat.yPx));
  const upper = 1 / Math.max(1, Math.hypot(shoulders.xPx - middle.xPx, shoulders.yPx - middle.yPx));
  return degrees(clickPx * Math.hypot(lower, upper, lower + upper));
}
