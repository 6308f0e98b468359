import type { Warning } from '../../recording/warnings.ts';
import type { Curves, SetMeasurement, ViewRead } from '../measurement.ts';
import { type Curve, valueAt } from '../reps/curve.ts';
import { isOfBody, type Tracked } from '../source/tracked.ts';
import type { Scale } from './calibrate.ts';
import { summarise } from './summarise.ts';
import { medianSpacing, type Path } from './tracked.ts';
import { nineInTen, wanderSpeed } from './wander.ts';

/** How much of a clip shows what is followed. */
export function trackOf({ sightings }: Tracked, frames: number): SetMeasurement['track'] {
  const seen = sightings.filter((sighting) => sighting !== null);
  const sum = seen.reduce((total, { confidence }) => total + confidence, 0);
  return { frames, lost: frames - seen.length, meanConfidence: seen.length === 0 ? 0 : sum / seen.length };
}

/** The path on the other axis, + = the way the lifter faces; null where that is not known. */
export function forwardCurve({ right }: Path, facing: 'left' | 'right' | null): Curve | null {
  if (facing === null) return null;
  const sense = facing === 'right' ? 1 : -1;
  const turned = (values: Curve['values']) => values.map((value) => (value === null ? null : value * sense));
  return { ...right, values: turned(right.values), speeds: turned(right.speeds) };
}

/** A set's curves, one item a frame. */
export function curvesOf(
  path: Path,
  {
    tracked,
    forward,
    scale,
    realTimeFactor,
  }: {
    readonly tracked: Tracked;
    readonly forward: Curve | null;
    readonly scale: Scale | null;
    readonly realTimeFactor: number;
  },
): Curves {
  const at = (curve: Curve) => path.timesS.map((timeS) => (scale ? valueAt(curve, timeS) : null));
  return {
    timesS: path.timesS.map((timeS) => timeS * realTimeFactor),
    positionPx: tracked.sightings.map((sighting) => sighting && { xPx: sighting.xPx, yPx: sighting.yPx }),
    heightM: at(path.up),
    forwardM: forward ? at(forward) : path.timesS.map(() => null),
    speedMps: at({ ...path.up, values: path.up.speeds }),
    heightPlusMinusM: scale ? heightPlusMinus(path, tracked.follows) : null,
  };
}

/** Heights this close together in time are nearby. */
const nearbyS = 0.25;
/** The network wanders so far with the posture, in metres. */
const bodyM = 0.015;

/** What a low-pass leaves of white noise (its share of the band that the frames carry), and how far the rest of a camera's movement goes. */
function heightPlusMinus({ noise, wander, cutOffHz, timesS }: Path, follows: Tracked['follows']): number {
  const share = Math.sqrt(Math.min(1, 2 * cutOffHz * medianSpacing(timesS)));
  return Math.hypot(nineInTen * share * noise, wanderSpeed(wander) * nearbyS, isOfBody(follows) ? bodyM : 0);
}

/** What is known of a clip in which nothing can be followed. */
export function nothingMeasured(
  timesS: readonly number[],
  {
    realTimeFactor,
    warnings,
    facing,
    read,
  }: {
    readonly realTimeFactor: number;
    readonly warnings: readonly Warning[];
    readonly facing: 'left' | 'right' | null;
    readonly read: ViewRead | null;
  },
): SetMeasurement {
  const none = timesS.map(() => null);
  return {
    calibration: null,
    follows: 'nothing',
    followsBecause: 'nothingSeen',
    track: { frames: timesS.length, lost: timesS.length, meanConfidence: 0 },
    facing,
    nearSide: facing,
    view: read,
    reps: [],
    offered: [],
    set: summarise([]),
    curves: {
      timesS: timesS.map((timeS) => timeS * realTimeFactor),
      positionPx: none,
      heightM: none,
      forwardM: none,
      speedMps: none,
      heightPlusMinusM: null,
    },
    warnings,
  };
}
