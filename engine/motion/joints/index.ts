/** What the lifter's joints tell: facing, posture, depth, and heights to find reps by. Pixels in, degrees and metres out. */
export {
  bendDeg,
  type Facing,
  headPitchDeg,
  leanDeg,
  thighInclinationDeg,
} from './angles.ts';
export { type BackPoints, backChangeDeg } from './back.ts';
export { bodyHeightPx } from './bodySize.ts';
export { type BodyInput, type BodyTrack, trackBody } from './bodyTrack.ts';
export { type DepthView, depthByClicks, depthByJoints, hipPlane, outcomeOf, type PlaneScale } from './depth.ts';
export { facingOf } from './facing.ts';
export { type HeightOf, jointHeights } from './jointHeights.ts';
export { measureRepJoints, type RepToMeasure } from './measureRepJoints.ts';
export { type Posture, type PostureReader, postureReader, type Reading } from './posture.ts';
