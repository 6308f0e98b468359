import type { Measured, RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';
import { sayUnseenToCoach } from '../../../engine/wording/sayMeasuring.ts';
import {
  aboutCentimetres,
  aboutMetresPerSecond,
  depthWords,
  type Figure,
  inCentimetres,
  inMetresPerSecond,
  inSeconds,
  inTens,
  phaseNames,
} from '../model/measureWords.ts';
import { type TempoToMeet, tempoWords } from './tempoTarget.ts';

/** One measure of a rep as the table shows it, with its moment in media seconds. */
export type MeasureCell =
  | { readonly kind: 'figure'; readonly figure: Figure; readonly atS: number }
  | { readonly kind: 'words'; readonly words: string; readonly atS: number }
  /** It can't be had; `why` says so in a sentence. */
  | { readonly kind: 'none'; readonly why: string };

export type MeasureColumn = { readonly id: string; readonly name: string; readonly unit: string };

export const measureColumns: readonly MeasureColumn[] = [
  { id: 'eccentric', name: 'Eccentric', unit: 's' },
  { id: 'pauseStretched', name: 'Pause, stretched', unit: 's' },
  { id: 'concentric', name: 'Concentric', unit: 's' },
  { id: 'pauseShortened', name: 'Pause, shortened', unit: 's' },
  { id: 'tempo', name: 'Tempo', unit: '' },
  { id: 'range', name: 'Range', unit: 'cm' },
  { id: 'meanSpeed', name: 'Mean speed', unit: 'm/s' },
  { id: 'peakSpeed', name: 'Peak speed', unit: 'm/s' },
  { id: 'forward', name: 'Forward', unit: 'cm' },
  { id: 'back', name: 'Back', unit: 'cm' },
  { id: 'depth', name: 'Depth', unit: '' },
  { id: 'knee', name: 'Knee', unit: '°' },
  { id: 'hip', name: 'Hip', unit: '°' },
  { id: 'trunk', name: 'Trunk lean', unit: '°' },
  { id: 'head', name: 'Head', unit: '°' },
  { id: 'also', name: 'Also seen', unit: '' },
];

const noScale = 'Nothing of known size was found, so there are no lengths: click the disc, or give a known length.';
const noSide =
  'The camera can’t tell forward from back here: it stands too far out of square, the facing is not known, or the body is followed.';
const noPhase = 'This rep has no such phase.';
const noJoints = 'No joints were looked for, or no lifter was found.';

const none = (why: string): MeasureCell => ({ kind: 'none', why });

/** The moment at which the load is at the stretched end. */
export function stretchedEndS({ phases, startS }: RepMeasurement): number {
  return phases.pauseStretched?.startS ?? phases.eccentric?.endS ?? phases.concentric?.startS ?? startS;
}

const figureOr = (
  measured: Measured | null,
  print: (measured: Measured) => Figure,
  atS: number,
  why: string,
): MeasureCell => (measured === null ? none(why) : { kind: 'figure', figure: print(measured), atS });

/** The moment furthest to one side; where only the other side's is known, the stretched end. */
function driftAtS(rep: RepMeasurement, side: 1 | -1): number {
  const { largestDeviation } = rep;
  return largestDeviation !== null && largestDeviation.m.value * side > 0 ? largestDeviation.atS : stretchedEndS(rep);
}

/** What happened beside the plain measures: a bounce, a sinking load, a back that changed. */
function alsoSeen({ bounces, downOnWayUpM, joints }: RepMeasurement): string {
  const back = joints?.backChangeDeg ?? null;
  const parts = [
    bounces !== null && bounces > 1 ? `turned round ${bounces} times at the low end` : '',
    downOnWayUpM !== null && downOnWayUpM.value > Math.max(0.005, downOnWayUpM.plusMinus)
      ? `sank ${inCentimetres(downOnWayUpM).value} cm on the way up`
      : '',
    back === null ? '' : `back changed by ${inTens(back).value} ± ${inTens(back).margin}°`,
  ];
  return parts.filter((part) => part !== '').join('; ');
}

function jointCells(rep: RepMeasurement): readonly MeasureCell[] {
  const { joints } = rep;
  if (joints === null) return [none(noJoints), none(noJoints), none(noJoints), none(noJoints), none(noJoints)];
  const atS = stretchedEndS(rep);
  const unseen =
    joints.unseen.length > 0 ? joints.unseen.map(sayUnseenToCoach).join(' ') : 'It can’t be seen in this rep.';
  const angle = (measured: Measured | null): MeasureCell => figureOr(measured, inTens, atS, unseen);
  const { depthOutcome, depthM, depthFrom } = joints;
  const by = depthFrom === 'clicks' ? ', by the points clicked' : '';
  return [
    depthOutcome === null ? none(unseen) : { kind: 'words', words: `${depthWords(depthOutcome, depthM)}${by}`, atS },
    angle(joints.kneeDeg),
    angle(joints.hipDeg),
    angle(joints.trunkLeanDeg),
    angle(joints.headTrunkDeg),
  ];
}

/** The measures of a rep, one for each of `measureColumns`. */
export function cellsOfRep(
  rep: RepMeasurement,
  { calibration }: Pick<SetMeasurement, 'calibration'>,
  tempo: TempoToMeet | null,
): readonly MeasureCell[] {
  const durations = phaseNames.map((phase) =>
    figureOr(rep.durationsS[phase], inSeconds, rep.phases[phase]?.startS ?? stretchedEndS(rep), noPhase),
  );
  const concentricS = rep.phases.concentric?.startS ?? rep.startS;
  const isAbout = calibration?.from === 'body';
  const speed = isAbout ? aboutMetresPerSecond : inMetresPerSecond;
  const unscaled = calibration === null ? noScale : noPhase;
  const drift = calibration === null ? noScale : noSide;
  const outside = tempo === null ? '' : tempoWords(rep, tempo);
  const also = alsoSeen(rep);
  return [
    ...durations,
    tempo === null
      ? none('Neither the plan nor the exercise says a tempo.')
      : { kind: 'words', words: outside === '' ? 'as asked' : outside, atS: rep.startS },
    figureOr(rep.romM, isAbout ? aboutCentimetres : inCentimetres, stretchedEndS(rep), unscaled),
    figureOr(rep.meanConcentricMps, speed, concentricS, unscaled),
    figureOr(rep.peakConcentricMps, speed, rep.peakSpeedAtS ?? concentricS, unscaled),
    figureOr(rep.driftForwardM, inCentimetres, driftAtS(rep, 1), drift),
    figureOr(rep.driftBackM, inCentimetres, driftAtS(rep, -1), drift),
    ...jointCells(rep),
    also === '' ? none('Nothing else was seen.') : { kind: 'words', words: also, atS: stretchedEndS(rep) },
  ];
}
