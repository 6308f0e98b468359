import type { PointPx } from '../../recording/recording.ts';
import type { Measured } from '../measurement.ts';
import { degrees, type Facing, forward, turned } from './angles.ts';

/** Three places along the back: seat, middle, shoulders. */
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

/** Turn from the lower to the upper line; + = the upper one leans further the way the lifter faces. */
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
