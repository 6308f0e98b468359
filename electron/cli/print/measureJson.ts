import type { Measured, RepJoints, RepMeasurement } from '../../../engine/motion/measurement.ts';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import { sayMeasuring, sayUnseenToCoach, sayWarningToCoach } from '../../../engine/wording/sayMeasuring.ts';
import { sayDoubt } from '../../../engine/wording/sayOffered.ts';
import { sayProblem } from '../../../engine/wording/sayProblem.ts';
import type { MeasuredFile } from '../sources/measureFiles.ts';

/**
 * What `measure --json` prints of one clip: times in media seconds, durations and speeds in lifting time, each number
 * with the half-width of its interval beside it (`romM`, `romPlusMinusM`); null where it can't be had.
 */
export function measureJson(measured: MeasuredFile) {
  const { file } = measured;
  if (measured.kind === 'failed') return { file, error: sayProblem(measured.problem.message, 'en') };
  const { probe, measurement, suggestions } = measured;
  const { calibration, track, follows, followsBecause, facing, nearSide, view, reps, offered, set, warnings } =
    measurement;
  return {
    file,
    clip: {
      frames: probe.facts.frames,
      durationS: probe.facts.durationUs / 1_000_000,
      realTimeFactor: probe.realTimeFactor,
      width: probe.facts.width,
      height: probe.facts.height,
      rotation: probe.facts.rotationDeg,
      displayWidth: probe.shown.width,
      displayHeight: probe.shown.height,
    },
    calibration,
    track,
    follows,
    followsBecause,
    facing,
    nearSide,
    view: view && {
      view: view.view,
      facing: view.facing,
      ...pair('azimuth', 'Deg', view.azimuthDeg),
      sureness: view.sureness,
    },
    reps: reps.map(repJson),
    offered: offered.map((rep) => ({ ...repJson(rep), reasons: rep.doubts.map((doubt) => sayDoubt(doubt, 'en')) })),
    ...pair('speedLoss', 'Pct', set.speedLossPct),
    romSpreadM: set.romSpreadM,
    eccentricSpreadS: set.eccentricSpreadS,
    suggestions: suggestions.map(suggestionJson),
    warnings: warnings.map((one) => sayWarningToCoach(one, 'en')),
  };
}

/** A suggestion, with its message as an English sentence. */
function suggestionJson({ id, criterion, fault, severity: weight, reps, atS, measure, message }: Suggestion) {
  const { name, value, plusMinus, unit } = measure;
  return {
    id,
    criterion,
    fault,
    weight,
    reps,
    atS,
    measure: { name, value, plusMinus, unit },
    sentence: sayMeasuring(message, 'en'),
  };
}

const phasesJson = ({ eccentric, pauseStretched, concentric, pauseShortened }: RepMeasurement['phases']) => ({
  eccentric,
  longPause: pauseStretched,
  concentric,
  shortPause: pauseShortened,
});

function repJson(rep: RepMeasurement) {
  const { durationsS, phases } = rep;
  return {
    index: rep.index,
    startS: rep.startS,
    endS: rep.endS,
    sureness: rep.sureness,
    doubts: rep.doubts,
    phases: phasesJson(phases),
    ...pair('eccentric', 'S', durationsS.eccentric),
    ...pair('longPause', 'S', durationsS.pauseStretched),
    ...pair('concentric', 'S', durationsS.concentric),
    ...pair('shortPause', 'S', durationsS.pauseShortened),
    ...pair('rom', 'M', rep.romM),
    ...pair('meanConcentric', 'Mps', rep.meanConcentricMps),
    ...pair('peakConcentric', 'Mps', rep.peakConcentricMps),
    peakSpeedAtS: rep.peakSpeedAtS,
    ...pair('driftForward', 'M', rep.driftForwardM),
    ...pair('driftBack', 'M', rep.driftBackM),
    ...pair('largestDeviation', 'M', rep.largestDeviation?.m ?? null),
    largestDeviationAtS: rep.largestDeviation?.atS ?? null,
    bounces: rep.bounces,
    ...pair('downOnWayUp', 'M', rep.downOnWayUpM),
    ...(rep.joints && { joints: jointsJson(rep.joints) }),
  };
}

/** Knee and hip are given as the angle the joint is bent to, 180 = straight, at the stretched end, where it is least. */
function jointsJson(joints: RepJoints) {
  return {
    ...pair('kneeMin', 'Deg', bentTo(joints.kneeDeg)),
    ...pair('hipMin', 'Deg', bentTo(joints.hipDeg)),
    ...pair('trunkLean', 'Deg', joints.trunkLeanDeg),
    ...pair('trunkLeanMax', 'Deg', joints.trunkLeanMaxDeg),
    ...pair('shankLean', 'Deg', joints.shankLeanDeg),
    ...pair('depth', 'M', joints.depthM),
    depthOutcome: joints.depthOutcome,
    depthFrom: joints.depthFrom,
    ...pair('headTrunk', 'Deg', joints.headTrunkDeg),
    ...pair('backChange', 'Deg', joints.backChangeDeg),
    unseen: joints.unseen.map((one) => sayUnseenToCoach(one, 'en')),
  };
}

const bentTo = (flexed: Measured | null): Measured | null => flexed && { ...flexed, value: 180 - flexed.value };

/** A number and its half-width under names like `romM` and `romPlusMinusM`; both null where there is none. */
function pair(name: string, unit: string, measured: Measured | null): Readonly<Record<string, number | null>> {
  return { [`${name}${unit}`]: measured?.value ?? null, [`${name}PlusMinus${unit}`]: measured?.plusMinus ?? null };
}
