import type { View } from '../../exercises/exercise.ts';
import { type Warning, warning } from '../../recording/warnings.ts';
import { bodyHeightPx } from '../joints/lifter.ts';
import { oneBody } from '../joints/oneBody.ts';
import type { RepMeasurement, SetMeasurement } from '../measurement.ts';
import type { EdgedRep } from '../reps/manualEdges.ts';
import { followedIn } from '../source/chooseSource.ts';
import { standingHeightPx } from '../source/standingHeight.ts';
import { isOfBody, type Tracked } from '../source/tracked.ts';
import { readView } from '../view/readView.ts';
import { bodyOfSet, jointsOfRep, sizeDoubt } from './bodyOfSet.ts';
import { leanOf, offAxisLimitsDeg, type Scale, scaleOf, scaleOfBody } from './calibrate.ts';
import { deviationsOf } from './expectedPath.ts';
import { reachesOf } from './reach.ts';
import { measureRep } from './repMeasurement.ts';
import { repsOf } from './repsOfSet.ts';
import { curvesOf, forwardCurve, nothingMeasured, trackOf } from './setCurves.ts';
import type { SetToMeasure } from './setToMeasure.ts';
import { noRepWarning, ofRecording, warningsOf } from './setWarnings.ts';
import { summarise } from './summarise.ts';
import { liftingTimes, pathOf } from './tracked.ts';

/** A clip of fewer frames shows no rep. */
const leastFrames = 12;

/** Measures a set from what was recorded of its clip. Every number comes with its uncertainty, or with why there is none. */
export function measureSet(asRecorded: SetToMeasure): SetMeasurement {
  const set = withOneBody(asRecorded);
  const { recording, table, exercise, realTimeFactor, shown, setUp } = set;
  const warnings: Warning[] = [];
  const timesS = liftingTimes(table, realTimeFactor);
  const mediaTimesS = timesS.map((timeS) => timeS * realTimeFactor);
  const read = recording.joints && readView(recording.joints);
  const view = set.view ?? read?.view ?? null;
  const heightPx = recording.joints && bodyHeightPx(recording.joints);
  const tracked = followedIn({ recording, exercise, setUp, mediaTimesS, shown });
  const leanDeg = tracked ? leanOf(setUp, tracked.camera, { xPx: meanX(tracked), widthPx: shown.width }) : null;
  const body = bodyOfSet({ recording, setUp, shown, mediaTimesS, view: set.view, read }, leanDeg);
  const facing = setUp.facing ?? read?.facing ?? null;
  warnings.push(...ofRecording(recording.warnings, tracked?.follows ?? 'nothing'));
  if (timesS.length < leastFrames) {
    warnings.push(warning('tooFewFrames', { frames: timesS.length }));
  }
  if (!tracked || timesS.length < leastFrames)
    return nothingMeasured(timesS, { realTimeFactor, warnings, facing, read });
  const scale = scaleOfTracked(set, tracked, leanDeg);
  const path = pathOf(tracked, timesS, scale);
  warnings.push(...warningsOf(view, { timesS, scale, leanDeg, facing, follows: tracked.follows }));
  const ofBar = scale?.calibration.from === 'body' ? null : scale;
  const doubt = heightPx !== null && ofBar ? sizeDoubt(heightPx, ofBar) : null;
  if (doubt !== null) warnings.push(doubt);
  const found = repsOf(path, set, {
    scale,
    bodyHeightPx: heightPx,
    tracked,
  });
  const { counted } = found;
  if (counted.length === 0) warnings.push(noRepWarning(exercise));
  const forward = isOfBody(tracked.follows) ? null : forwardCurve(path, facing);
  const sideways = forward && sidewaysTold(scale, view) ? forward : null;
  const context = {
    exercise,
    up: path.up,
    timesS,
    realTimeFactor,
    relativeUncertainty: scale ? scale.calibration.relativeUncertainty : null,
    noise: path.noise,
    wander: path.wander,
    uprightKnown: leanDeg !== null,
    follows: tracked.follows,
    doubtShare: tracked.doubtShare,
  };
  const firstStartS = counted[0] ? counted[0].span.startS * realTimeFactor : 0;
  const measured = (edged: readonly EdgedRep[]): RepMeasurement[] => {
    const moves = edged.map((rep) => rep.moves);
    const deviations = sideways && deviationsOf({ up: path.up, forward: sideways }, moves, exercise.targets.path);
    const reaches = reachesOf(edged, context);
    return edged.map((one, index) => {
      const rep = measureRep(one, edged[index + 1], {
        index: index + 1,
        deviations: deviations?.[index] ?? null,
        context,
      });
      return {
        ...rep,
        reach: reaches[index] ?? null,
        joints: body && jointsOfRep(body, rep, { exercise, setUp, scale: ofBar, firstStartS }),
      };
    });
  };
  const reps = measured(counted);
  return {
    calibration: scale ? { ...scale.calibration, cutOffHz: path.cutOffHz } : null,
    follows: tracked.follows,
    followsBecause: tracked.because,
    track: trackOf(tracked, timesS.length),
    facing,
    nearSide: facing,
    view: read,
    reps,
    offered: measured(found.offered),
    set: summarise(reps),
    curves: curvesOf(path, { tracked, forward, scale, realTimeFactor }),
    warnings,
  };
}

/** The set without what was seen of others than the lifter. */
function withOneBody(set: SetToMeasure): SetToMeasure {
  const { recording, table, realTimeFactor } = set;
  if (recording.joints === null) return set;
  const frames = oneBody(recording.joints, liftingTimes(table, realTimeFactor));
  return { ...set, recording: { ...recording, joints: { ...recording.joints, frames } } };
}

/**
 * No scale for a camera that moves and can't be steadied; and none from a disc for what moves in another plane: there the
 * lifter's own size has to do.
 */
function scaleOfTracked(
  { recording, setUp }: SetToMeasure,
  { follows, camera, givesRange }: Tracked,
  leanDeg: number | null,
): Scale | null {
  if (camera?.moves && !camera.removable) return null;
  if (!isOfBody(follows)) return scaleOf({ setUp, outline: recording.disc?.outline ?? null, leanDeg });
  if (setUp.knownLength) return scaleOf({ setUp, outline: null, leanDeg });
  const standingPx = givesRange && recording.joints ? standingHeightPx(recording.joints) : null;
  return standingPx === null ? null : scaleOfBody(standingPx, leanDeg);
}

function meanX({ sightings }: Tracked): number {
  const seen = sightings.filter((sighting) => sighting !== null);
  return seen.reduce((sum, { xPx }) => sum + xPx, 0) / Math.max(1, seen.length);
}

function sidewaysTold(scale: Scale | null, view: View | null): boolean {
  if (!scale || (view !== null && view !== 'side')) return false;
  return (scale.calibration.offAxisDeg ?? 0) <= offAxisLimitsDeg.refuse;
}
