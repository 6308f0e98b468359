import type { Exercise, View } from '../exercises/exercise.ts';
import type { FrameTable } from '../time/frameTable.ts';
import { leanOf, offAxisLimitsDeg, type Scale, scaleOf } from './calibrate.ts';
import { deviationsOf } from './expectedPath.ts';
import type { Curves, RepJoints, RepMeasurement, SetMeasurement } from './measurement.ts';
import type { Recording } from './recording.ts';
import { measureRep } from './repMeasurement.ts';
import { type Curve, valueAt } from './reps/curve.ts';
import { type EdgedRep, type ManualRep, withManualEdges } from './reps/manualEdges.ts';
import { repsOfCurve } from './reps/phases.ts';
import type { SetUp } from './setUp.ts';
import { summarise } from './summarise.ts';
import { liftingTimes, medianSpacing, type Path, pathOf, type Tracked } from './tracked.ts';

export type { ManualRep } from './reps/manualEdges.ts';

export type SetToMeasure = {
  readonly recording: Recording;
  readonly table: FrameTable;
  readonly shown: { readonly width: number; readonly height: number };
  /** Capture rate / playback rate. */
  readonly realTimeFactor: number;
  readonly exercise: Exercise;
  readonly view: View | null;
  readonly setUp: SetUp;
  /** Edges that a person set, in media seconds, one item a rep that has any. */
  readonly edges: readonly ManualRep[];
};

/** What a rep must cover at least: shorter ways are steps, sways and noise. */
const leastRangeM = 0.06;
const leastNoises = 8;
/** Fewer frames a second than this blur the ends of phases. */
const fewFramesPerSecond = 20;
const leastFrames = 12;

/** Measures a set from what was recorded of its clip. Everything is told with its uncertainty, or with why it can't be. */
export function measureSet(set: SetToMeasure): SetMeasurement {
  const { recording, table, exercise, realTimeFactor } = set;
  const warnings = [...recording.warnings];
  const timesS = liftingTimes(table, realTimeFactor);
  const tracked = followedIn(recording);
  if (timesS.length < leastFrames) {
    warnings.push(`The clip has ${timesS.length} frames, which is too few to find a rep in.`);
  }
  const leanDeg = tracked ? leanOf(set.setUp, tracked.camera, { xPx: meanX(tracked), widthPx: set.shown.width }) : null;
  const scale =
    tracked && isSteady(tracked)
      ? scaleOf({ setUp: set.setUp, outline: recording.disc?.outline ?? null, leanDeg })
      : null;
  const facing = set.setUp.facing;
  if (!tracked || timesS.length < leastFrames) return nothingMeasured(set, timesS, { warnings, facing });
  const path = pathOf(tracked, timesS, scale);
  warnings.push(...warningsOf(set, { timesS, scale, leanDeg, facing }));
  const edged = repsOf(path, set, scale);
  if (edged.length === 0) warnings.push(noRepSentence(exercise));
  const forward = forwardCurve(path, facing);
  const sideways = forward && sidewaysTold(scale, set.view) ? forward : null;
  const moves = edged.map((rep) => rep.moves);
  const deviations = sideways
    ? deviationsOf({ up: path.up, forward: sideways }, moves, exercise.targets.path)
    : moves.map(() => null);
  const context = {
    exercise,
    up: path.up,
    timesS,
    realTimeFactor,
    relativeUncertainty: scale ? scale.calibration.relativeUncertainty : null,
    noise: path.noise,
    uprightKnown: leanDeg !== null,
  };
  const reps: RepMeasurement[] = edged.map((rep, index) => ({
    ...measureRep(rep, edged[index + 1], { index: index + 1, deviations: deviations[index] ?? null, context }),
    joints: jointsOfRep(),
  }));
  return {
    calibration: scale ? { ...scale.calibration, cutOffHz: path.cutOffHz } : null,
    follows: tracked.follows,
    track: trackOf(tracked, timesS.length),
    facing,
    nearSide: facing,
    reps,
    set: summarise(reps),
    curves: curvesOf(path, { tracked, forward, scale, realTimeFactor }),
    warnings,
  };
}

function jointsOfRep(): RepJoints | null {
  return null;
}

/** A point that the coach clicked goes before the disc: it was clicked because the disc isn't the load. */
function followedIn({ disc, point }: Recording): Tracked | null {
  if (point) return { follows: 'point', sightings: point.frames, camera: point.camera };
  if (disc) return { follows: 'disc', sightings: disc.frames, camera: disc.camera };
  return null;
}

const isSteady = ({ camera }: Tracked): boolean => !camera?.moves || camera.removable;

function meanX({ sightings }: Tracked): number {
  const seen = sightings.filter((sighting) => sighting !== null);
  return seen.reduce((sum, { xPx }) => sum + xPx, 0) / Math.max(1, seen.length);
}

function repsOf(path: Path, { exercise, edges, realTimeFactor }: SetToMeasure, scale: Scale | null): EdgedRep[] {
  const least = scale ? Math.max(leastRangeM, leastNoises * path.noise) : leastRangePx(path);
  const measured = repsOfCurve(path.up, exercise, least);
  const lifting = edges.map(({ startS, longEndS, endS }) => ({
    ...(startS !== undefined && { startS: startS / realTimeFactor }),
    ...(longEndS !== undefined && { longEndS: longEndS / realTimeFactor }),
    ...(endS !== undefined && { endS: endS / realTimeFactor }),
  }));
  return withManualEdges(measured, lifting, { curve: path.up, exercise });
}

/** Without a scale: a good part of all the way there is, well above the noise. */
function leastRangePx({ up, noise }: Path): number {
  const values = up.values.filter((value) => value !== null);
  const range = Math.max(...values) - Math.min(...values);
  return Math.max(0.25 * range, 12 * noise, 6);
}

function sidewaysTold(scale: Scale | null, view: View | null): boolean {
  if (!scale || (view !== null && view !== 'side')) return false;
  return (scale.calibration.offAxisDeg ?? 0) <= offAxisLimitsDeg.refuse;
}

function forwardCurve({ right }: Path, facing: 'left' | 'right' | null): Curve | null {
  if (facing === null) return null;
  const sense = facing === 'right' ? 1 : -1;
  const turned = (values: Curve['values']) => values.map((value) => (value === null ? null : value * sense));
  return { ...right, values: turned(right.values), speeds: turned(right.speeds) };
}

function warningsOf(
  { view }: SetToMeasure,
  {
    timesS,
    scale,
    leanDeg,
    facing,
  }: {
    readonly timesS: readonly number[];
    readonly scale: Scale | null;
    readonly leanDeg: number | null;
    readonly facing: 'left' | 'right' | null;
  },
): string[] {
  const warnings: string[] = [];
  const framesPerSecond = 1 / medianSpacing(timesS);
  if (framesPerSecond < fewFramesPerSecond) {
    warnings.push(
      `The clip has about ${Math.round(framesPerSecond)} frames a second, so phases are told to a frame, ${(1 / framesPerSecond).toFixed(2)} s, at best.`,
    );
  }
  if (!scale) {
    warnings.push(
      'There is no scale, so lengths and speeds are not told; give the length of something in the plane of the bar.',
    );
    return warnings;
  }
  const offAxisDeg = scale.calibration.offAxisDeg ?? 0;
  if (offAxisDeg > offAxisLimitsDeg.refuse) {
    warnings.push(`The camera is turned ${Math.round(offAxisDeg)}° out of square, so sideways drift is not told.`);
  } else if (offAxisDeg > offAxisLimitsDeg.warn) {
    warnings.push(
      `The camera is turned about ${Math.round(offAxisDeg)}° out of square; sideways measures are corrected for it and less sure.`,
    );
  }
  if (view !== null && view !== 'side')
    warnings.push('The clip is not filmed from the side, so sideways drift is not told.');
  if (leanDeg === null) {
    warnings.push(
      'Nothing upright was found in the room, so the camera is taken to be level; draw a plumb line along a post.',
    );
  }
  if (facing === null) warnings.push('Which way the lifter faces is not known, so drift is not told; say which.');
  return warnings;
}

const noRepSentence = ({ beginsWith }: Exercise): string =>
  beginsWith === 'hold'
    ? 'A hold has no reps; its length is told by the edges you set.'
    : 'Nothing that was followed goes there and back as a rep does, so no rep is told.';

function trackOf({ sightings }: Tracked, frames: number): SetMeasurement['track'] {
  const seen = sightings.filter((sighting) => sighting !== null);
  const sum = seen.reduce((total, { confidence }) => total + confidence, 0);
  return { frames, lost: frames - seen.length, meanConfidence: seen.length === 0 ? 0 : sum / seen.length };
}

function curvesOf(
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
    placePx: tracked.sightings.map((sighting) => sighting && { xPx: sighting.xPx, yPx: sighting.yPx }),
    heightM: at(path.up),
    forwardM: forward ? at(forward) : path.timesS.map(() => null),
    speedMps: at({ ...path.up, values: path.up.speeds }),
  };
}

function nothingMeasured(
  { realTimeFactor }: SetToMeasure,
  timesS: readonly number[],
  { warnings, facing }: { readonly warnings: readonly string[]; readonly facing: 'left' | 'right' | null },
): SetMeasurement {
  const none = timesS.map(() => null);
  return {
    calibration: null,
    follows: 'nothing',
    track: { frames: timesS.length, lost: timesS.length, meanConfidence: 0 },
    facing,
    nearSide: facing,
    reps: [],
    set: summarise([]),
    curves: {
      timesS: timesS.map((timeS) => timeS * realTimeFactor),
      placePx: none,
      heightM: none,
      forwardM: none,
      speedMps: none,
    },
    warnings,
  };
}
