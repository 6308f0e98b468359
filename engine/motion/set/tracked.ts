import type { PointPx } from '../../recording/recording.ts';
import { frameStartUs } from '../../time/frames.ts';
import type { FrameTable } from '../../time/frameTable.ts';
import { steadied } from '../camera/cameraPath.ts';
import { type Curve, smoothCurve } from '../reps/curve.ts';
import { knownRuns, onEvenGrid } from '../signal/evenGrid.ts';
import { noiseSd, residualCutOffHz } from '../signal/noise.ts';
import { quantile } from '../signal/quantile.ts';
import { isOfBody, type Tracked } from '../source/tracked.ts';
import { inMetres, type Scale } from './calibrate.ts';

/** The smoothed path of what is followed: metres, or pixels where there is no scale. */
export type Path = {
  readonly timesS: readonly number[];
  readonly up: Curve;
  /** To the picture's right. */
  readonly right: Curve;
  readonly cutOffHz: number;
  /** Standard deviation of the unsmoothed height, in the curve's unit. */
  readonly noise: number;
  /** Standard deviation of what is left of the camera's own, slow movement, in the curve's unit. */
  readonly wander: number;
};

/** A gap up to this long is bridged, a longer one never. */
const longestGapS = 0.25;
/** The widest band that hand-held loads move in; wider only lets noise through. */
const cutOffLimitsHz = { lowest: 4, highest: 7 } as const;
/** Joints tremble too much for more than the slowest band that a lift still fits in. */
const lowestOfBodyHz = 3;

/** Joints stray by this share of the range at least, and slowly: measured on rendered lifters. */
const leastWanderShare = 0.01;

/** Lifting seconds of each frame since the first. */
export function liftingTimes(table: FrameTable, realTimeFactor: number): number[] {
  const firstUs = frameStartUs(table, 0);
  return table.ticks.map((_, frame) => (frameStartUs(table, frame) - firstUs) / 1_000_000 / realTimeFactor);
}

/** The path of what is followed, on an even grid, without the camera's own movement. */
export function pathOf(tracked: Tracked, timesS: readonly number[], scale: Scale | null): Path {
  const points = tracked.sightings.map((sighting, frame) => sighting && steadied(tracked.camera, frame, sighting));
  const origin = points.find((point) => point !== null) ?? { xPx: 0, yPx: 0 };
  const offsets = points.map((point) => (point ? offsetOf(point, origin, scale) : null));
  const spacingS = medianSpacing(timesS);
  const ups = offsets.map((offset) => offset?.upM ?? null);
  const lowestHz = isOfBody(tracked.follows) ? lowestOfBodyHz : cutOffLimitsHz.lowest;
  const cutOffHz = cutOffOf(timesS, ups, { spacingS, lowestHz });
  const options = {
    stepS: Math.min(spacingS, 1 / 60),
    cutOffHz,
    longestGapS: Math.max(longestGapS, 2.5 * spacingS),
    wander: wanderOf(tracked, ups),
  };
  return {
    timesS,
    up: smoothCurve(timesS, ups, options),
    right: smoothCurve(
      timesS,
      offsets.map((offset) => offset?.rightM ?? null),
      options,
    ),
    cutOffHz,
    noise: noiseSd(ups) ?? 0,
    wander: tracked.wanderPx * (scale?.metresPerPixelUp ?? 1),
  };
}

/** How far a body's place wanders off the load's, however smooth it is; a disc and a clicked point don't. */
function wanderOf({ follows, doubtShare }: Tracked, ups: readonly (number | null)[]): number {
  if (!isOfBody(follows)) return 0;
  const known = ups.filter((up) => up !== null);
  return Math.max(leastWanderShare, doubtShare) * (quantile(known, 0.95) - quantile(known, 0.05));
}

function offsetOf(
  point: PointPx,
  origin: PointPx,
  scale: Scale | null,
): { readonly upM: number; readonly rightM: number } {
  return scale ? inMetres(scale, point, origin) : { upM: origin.yPx - point.yPx, rightM: point.xPx - origin.xPx };
}

/** By residual analysis on the longest stretch seen, within the limits and what the frame rate carries. */
function cutOffOf(
  timesS: readonly number[],
  values: readonly (number | null)[],
  { spacingS, lowestHz }: { readonly spacingS: number; readonly lowestHz: number },
): number {
  const highest = Math.min(cutOffLimitsHz.highest, 0.42 / spacingS);
  const grid = onEvenGrid(timesS, values, { stepS: spacingS, longestGapS: Math.max(longestGapS, 2.5 * spacingS) });
  const [longest] = knownRuns(grid.values).sort((one, other) => other.values.length - one.values.length);
  const known = longest?.values ?? [];
  if (known.length < 30) return Math.min(6, highest);
  return Math.max(Math.min(lowestHz, highest), Math.min(highest, residualCutOffHz(known, { sampleHz: 1 / spacingS })));
}

/** The usual time between two frames. */
export function medianSpacing(timesS: readonly number[]): number {
  const spacings = timesS.slice(1).map((timeS, index) => timeS - (timesS[index] ?? timeS));
  return spacings.sort((one, other) => one - other)[spacings.length >> 1] ?? 1 / 30;
}
