import type { PointPx } from '../../recording/recording.ts';

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
