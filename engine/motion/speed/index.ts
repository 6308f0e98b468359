/** What bar speeds say: speed lost over a set, a lifter's own line of speed over load, the propulsive part of a rep. */
export {
  type LoadSpeedLine,
  loadAtSpeedKg,
  loadSpeedLine,
  publishedSlowestMps,
} from './loadSpeedLine.ts';
export { meanPropulsiveMps } from './propulsive.ts';
export { speedLossPct } from './speedLoss.ts';
