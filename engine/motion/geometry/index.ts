/**
 * What a flat picture makes of a movement: scale and its error, planes that are nearer or further, cameras turned or
 * rolled, frames and smear. Metres, degrees, seconds; closed formulas.
 */
export { blurM, frameTimeSdS, frameTimeWorstS, rateToTimeWithin } from './exposure.ts';
export {
  type OutOfPlane,
  offAxisDeg,
  offAxisLimitsDeg,
  outOfPlaneShare,
  outOfPlaneShiftM,
  rollDriftM,
  sidewaysShare,
} from './plane.ts';
export { depthUncertaintyM, metresPerPixel, scaleErrorPerPixel } from './scale.ts';
