import type { Exercise, View } from '../../exercises/exercise.ts';
import type { Recording } from '../../recording/recording.ts';
import type { SetUp } from '../../recording/setUp.ts';
import { type Warning, warning } from '../../recording/warnings.ts';
import type { FrameTable } from '../../time/frameTable.ts';
import { cameraOf } from '../camera/cameraPath.ts';
import type { Curves, RepMeasurement, SetMeasurement, ViewRead } from '../measurement.ts';
import { type Curve, valueAt } from '../reps/curve.ts';
import { type EdgedRep, withManualEdges } from '../reps/manualEdges.ts';
import { repsOfCurve } from '../reps/phases.ts';
import type { ManualRep } from '../reps/setEdges.ts';
import { readView } from '../view/readView.ts';
import { bodyOfSet, followedJoints, jointsOfRep, partFollowed, sizeDoubt } from './bodyOfSet.ts';
import { leanOf, offAxisLimitsDeg, type Scale, scaleOf } from './calibrate.ts';
import { deviationsOf } from './expectedPath.ts';
import { measureRep } from './repMeasurement.ts';
import { summarise } from './summarise.ts';
import { isOfBody, liftingTimes, medianSpacing, type Path, pathOf, type Tracked } from './tracked.ts';

export type { ManualRep } from '../reps/setEdges.ts';

export type SetToMeasure = {
  readonly recording: Recording;
  readonly table: FrameTable;
  readonly shown: { readonly width: number; readonly height: number };
  /** Capture rate / playback rate. */
  readonly realTimeFactor: number;
  readonly exercise: Exercise;
  /** As the coach chose it; null = as the joints show it. */
  readonly view: View | null;
  readonly setUp: SetUp;
  /** Edges that a person set, in media seconds, one item a rep that has any. */
  readonly edges: readonly ManualRep[];
};

/** What a rep must cover at least: anything shorter is a step, sway or noise. */
const leastRangeM = 0.06;
const leastNoises = 8;
/** The same without a scale, as a share of the lifter's standing height. */
const leastShareOfBody = 0.035;
const followedPart = { wrist: 'hands', shoulder: 'shoulders', hip: 'hips', head: 'head' } as const;
/** Below this many frames a second the ends of phases blur. */
const fewFramesPerSecond = 20;
const leastFrames = 12;

/** Measures a set from what was recorded of its clip. Every number comes with its uncertainty, or with why there is none. */
export function measureSet(set: SetToMeasure): SetMeasurement {
  const { recording, table, exercise, realTimeFactor, shown, setUp } = set;
  const warnings: Warning[] = [...recording.warnings];
  const timesS = liftingTimes(table, realTimeFactor);
  const mediaTimesS = timesS.map((timeS) => timeS * realTimeFactor);
  const read = recording.joints && readView(recording.joints);
  const view = set.view ?? read?.view ?? null;
  const tracked = followedIn(set, mediaTimesS, read);
  const leanDeg = tracked ? leanOf(setUp, tracked.camera, { xPx: meanX(tracked), widthPx: shown.width }) : null;
  const body = bodyOfSet({ recording, setUp, shown, mediaTimesS, read }, leanDeg);
  const facing = setUp.facing ?? read?.facing ?? null;
  if (timesS.length < leastFrames) {
    warnings.push(warning('tooFewFrames', { frames: timesS.length }));
  }
  if (!tracked || timesS.length < leastFrames)
    return nothingMeasured(timesS, { realTimeFactor, warnings, facing, read });
  const scale = scaleOfTracked(set, tracked, leanDeg);
  const path = pathOf(tracked, timesS, scale);
  warnings.push(...warningsOf(view, { timesS, scale, leanDeg, facing, follows: tracked.follows }));
  const doubt = body && scale ? sizeDoubt(body, scale) : null;
  if (doubt !== null) warnings.push(doubt);
  const edged = repsOf(path, set, { scale, bodyHeightPx: body?.track.heightPx ?? null });
  if (edged.length === 0) warnings.push(noRepWarning(exercise));
  const forward = isOfBody(tracked.follows) ? null : forwardCurve(path, facing);
  const sideways = forward && sidewaysTold(scale, view) ? forward : null;
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
    follows: tracked.follows,
  };
  const measured = edged.map((rep, index) =>
    measureRep(rep, edged[index + 1], { index: index + 1, deviations: deviations[index] ?? null, context }),
  );
  const firstStartS = measured[0]?.startS ?? 0;
  const reps: RepMeasurement[] = measured.map((rep) => ({
    ...rep,
    joints: body && jointsOfRep(body, rep, { exercise, setUp, scale, firstStartS }),
  }));
  return {
    calibration: scale ? { ...scale.calibration, cutOffHz: path.cutOffHz } : null,
    follows: tracked.follows,
    followsBecause: tracked.because,
    track: trackOf(tracked, timesS.length),
    facing,
    nearSide: facing,
    view: read,
    reps,
    offered: [],
    set: summarise(reps),
    curves: curvesOf(path, { tracked, forward, scale, realTimeFactor }),
    warnings,
  };
}

/**
 * What is followed: first of all a point that the coach clicked, since it was clicked because nothing else is the load; then
 * a disc; else the body. In an exercise without a disc, one counts only when it makes the lifter beside it a believable
 * height: the head of a dumbbell is round too.
 */
function followedIn(set: SetToMeasure, mediaTimesS: readonly number[], read: ViewRead | null): Tracked | null {
  const { recording, exercise, shown } = set;
  const { disc, point } = recording;
  const camera = cameraOf(recording);
  if (point) return { follows: 'point', because: 'clicked', sightings: point.frames, camera };
  const byDisc = disc ? ({ follows: 'disc', because: 'discUnchecked', sightings: disc.frames, camera } as const) : null;
  if (exercise.trackedPoint === 'disc' || exercise.trackedPoint === 'bar-end') return byDisc;
  const sightings = followedJoints(recording, exercise, { mediaTimesS, shown });
  if (!sightings) return byDisc;
  return byDisc && isFullSize(set, mediaTimesS, read)
    ? byDisc
    : {
        follows: followedPart[partFollowed(exercise)],
        because: disc ? 'discOfUnlikelySize' : 'noDiscExpected',
        sightings,
        camera,
      };
}

function isFullSize(
  { recording, setUp, shown }: SetToMeasure,
  mediaTimesS: readonly number[],
  read: ViewRead | null,
): boolean {
  const scale = scaleOf({ setUp, outline: recording.disc?.outline ?? null, leanDeg: null });
  const body = bodyOfSet({ recording, setUp, shown, mediaTimesS, read }, null);
  return scale !== null && (body === null || sizeDoubt(body, scale) === null);
}

/** No scale for a camera that moves and can't be steadied; and none from a disc for what moves in another plane. */
function scaleOfTracked(
  { recording, setUp }: SetToMeasure,
  { follows, camera }: Tracked,
  leanDeg: number | null,
): Scale | null {
  if (camera?.moves && !camera.removable) return null;
  const outline = isOfBody(follows) ? null : (recording.disc?.outline ?? null);
  return scaleOf({ setUp, outline, leanDeg });
}

function meanX({ sightings }: Tracked): number {
  const seen = sightings.filter((sighting) => sighting !== null);
  return seen.reduce((sum, { xPx }) => sum + xPx, 0) / Math.max(1, seen.length);
}

function repsOf(
  path: Path,
  { exercise, edges, realTimeFactor }: SetToMeasure,
  { scale, bodyHeightPx }: { readonly scale: Scale | null; readonly bodyHeightPx: number | null },
): EdgedRep[] {
  const least = scale ? Math.max(leastRangeM, leastNoises * path.noise) : leastRangePx(path, bodyHeightPx);
  const measured = repsOfCurve(path.up, exercise, least);
  const lifting = edges.map(({ startS, longEndS, endS }) => ({
    ...(startS !== undefined && { startS: startS / realTimeFactor }),
    ...(longEndS !== undefined && { longEndS: longEndS / realTimeFactor }),
    ...(endS !== undefined && { endS: endS / realTimeFactor }),
  }));
  return withManualEdges(measured, lifting, { curve: path.up, exercise });
}

/** Without a scale: a good part of the whole range, well above the noise and more than the body sways. */
function leastRangePx({ up, noise }: Path, bodyHeightPx: number | null): number {
  const values = up.values.filter((value) => value !== null);
  const range = Math.max(...values) - Math.min(...values);
  return Math.max(0.25 * range, 12 * noise, leastShareOfBody * (bodyHeightPx ?? 0), 6);
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
  view: View | null,
  {
    timesS,
    scale,
    leanDeg,
    facing,
    follows,
  }: {
    readonly follows: Tracked['follows'];
    readonly timesS: readonly number[];
    readonly scale: Scale | null;
    readonly leanDeg: number | null;
    readonly facing: 'left' | 'right' | null;
  },
): Warning[] {
  const warnings: Warning[] = [];
  const framesPerSecond = 1 / medianSpacing(timesS);
  if (framesPerSecond < fewFramesPerSecond) {
    warnings.push(
      warning('fewFramesPerSecond', {
        framesPerSecond: Math.round(framesPerSecond),
        seconds: Math.round(100 / framesPerSecond) / 100,
      }),
    );
  }
  if (isOfBody(follows)) {
    warnings.push(warning('fromBody', {}));
    return warnings;
  }
  if (!scale) {
    warnings.push(warning('noScale', {}));
    return warnings;
  }
  const offAxisDeg = scale.calibration.offAxisDeg ?? 0;
  if (offAxisDeg > offAxisLimitsDeg.refuse) {
    warnings.push(warning('farOffAxis', { degrees: Math.round(offAxisDeg) }));
  } else if (offAxisDeg > offAxisLimitsDeg.warn) {
    warnings.push(warning('offAxis', { degrees: Math.round(offAxisDeg) }));
  }
  if (view !== null && view !== 'side') warnings.push(warning('notFromSide', {}));
  if (leanDeg === null) {
    warnings.push(warning('nothingUpright', {}));
  }
  if (facing === null) warnings.push(warning('facingUnknown', {}));
  return warnings;
}

const noRepWarning = ({ beginsWith }: Exercise): Warning =>
  beginsWith === 'hold' ? warning('hold', {}) : warning('noRep', {});

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
    positionPx: tracked.sightings.map((sighting) => sighting && { xPx: sighting.xPx, yPx: sighting.yPx }),
    heightM: at(path.up),
    forwardM: forward ? at(forward) : path.timesS.map(() => null),
    speedMps: at({ ...path.up, values: path.up.speeds }),
  };
}

function nothingMeasured(
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
    },
    warnings,
  };
}
