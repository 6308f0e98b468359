import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type {
  DepthOutcome,
  Measured,
  RepJoints,
  RepMeasurement,
  SetMeasurement,
} from '../../../engine/motion/measurement.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import type { MeasuresMessageId } from '../../../engine/wording/english/desk/measures.ts';
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
} from '../../base/measureWords.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { type TempoToMeet, tempoWords } from './tempoTarget.ts';

/** One measure of a rep as the table shows it, with its moment in media seconds. */
export type MeasureCell =
  | { readonly kind: 'figure'; readonly figure: Figure; readonly atS: number }
  /** `inShort` stands in the cell where the words are too long for it. */
  | { readonly kind: 'words'; readonly words: string; readonly inShort?: string; readonly atS: number }
  /** It can't be had; `why` says so in a sentence. */
  | { readonly kind: 'none'; readonly why: string };

/** The measures of a rep in the order of their columns, each by the name that the wording has for it. */
export const measureColumns = [
  { id: 'eccentric', unit: 's' },
  { id: 'pauseStretched', unit: 's' },
  { id: 'concentric', unit: 's' },
  { id: 'pauseShortened', unit: 's' },
  { id: 'tempo', unit: '' },
  { id: 'range', unit: 'cm' },
  { id: 'meanSpeed', unit: 'm/s' },
  { id: 'peakSpeed', unit: 'm/s' },
  { id: 'forward', unit: 'cm' },
  { id: 'back', unit: 'cm' },
  { id: 'depth', unit: '' },
  { id: 'knee', unit: '°' },
  { id: 'hip', unit: '°' },
  { id: 'trunk', unit: '°' },
  { id: 'head', unit: '°' },
  { id: 'also', unit: '' },
] as const satisfies readonly { readonly id: MeasuresMessageId; readonly unit: string }[];

export type MeasureColumn = (typeof measureColumns)[number];

/** The columns for an exercise: without depth where what it is judged by is its range. */
export function columnsOf(catalogue: Catalogue, exerciseId: string): readonly MeasureColumn[] {
  const goesDeep = criterionName(catalogue, 'depth', exerciseId) === criterionName(catalogue, 'depth');
  return measureColumns.filter(({ id }) => id !== 'depth' || goesDeep);
}

const none = (why: string): MeasureCell => ({ kind: 'none', why });
const noneBecause = (id: MeasuresMessageId): MeasureCell => none(sayMeasures(id));

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
  const sank = downOnWayUpM !== null && downOnWayUpM.value > Math.max(0.005, downOnWayUpM.plusMinus);
  const change = back === null ? null : inTens(back);
  const parts = [
    bounces !== null && bounces > 1 ? sayMeasures('turned', { times: bounces }) : '',
    sank ? sayMeasures('sank', { centimetres: inCentimetres(downOnWayUpM).value }) : '',
    change === null ? '' : sayMeasures('backChanged', { degrees: change.value, margin: change.margin }),
  ];
  return parts.filter((part) => part !== '').join('; ');
}

function depthFound(outcome: DepthOutcome, depthM: Measured | null, from: RepJoints['depthFrom']): string {
  const depth = depthWords(outcome, depthM);
  return from === 'clicks' ? sayMeasures('byClicks', { depth }) : depth;
}

function jointCells(rep: RepMeasurement): readonly MeasureCell[] {
  const { joints } = rep;
  if (joints === null) return Array.from({ length: 5 }, () => noneBecause('noJoints'));
  const atS = stretchedEndS(rep);
  const { language } = deskLanguage.getState();
  const unseen =
    joints.unseen.length > 0
      ? joints.unseen.map((one) => sayUnseenToCoach(one, language)).join(' ')
      : sayMeasures('notVisible');
  const angle = (measured: Measured | null): MeasureCell => figureOr(measured, inTens, atS, unseen);
  const { depthOutcome, depthM, depthFrom } = joints;
  return [
    depthOutcome === null ? none(unseen) : { kind: 'words', words: depthFound(depthOutcome, depthM, depthFrom), atS },
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
    figureOr(rep.durationsS[phase], inSeconds, rep.phases[phase]?.startS ?? stretchedEndS(rep), sayMeasures('noPhase')),
  );
  const concentricS = rep.phases.concentric?.startS ?? rep.startS;
  const isAbout = calibration?.from === 'body';
  const speed = isAbout ? aboutMetresPerSecond : inMetresPerSecond;
  const unscaled = sayMeasures(calibration === null ? 'noScale' : 'noPhase');
  const drift = sayMeasures(calibration === null ? 'noScale' : 'noSide');
  const outside = tempo === null ? '' : tempoWords(rep, tempo);
  const also = alsoSeen(rep);
  return [
    ...durations,
    tempo === null
      ? noneBecause('noTempo')
      : outside === ''
        ? { kind: 'words', words: sayMeasures('onTarget'), atS: rep.startS }
        : { kind: 'words', words: outside, inShort: sayMeasures('offTarget'), atS: rep.startS },
    figureOr(rep.romM, isAbout ? aboutCentimetres : inCentimetres, stretchedEndS(rep), unscaled),
    figureOr(rep.meanConcentricMps, speed, concentricS, unscaled),
    figureOr(rep.peakConcentricMps, speed, rep.peakSpeedAtS ?? concentricS, unscaled),
    figureOr(rep.driftForwardM, inCentimetres, driftAtS(rep, 1), drift),
    figureOr(rep.driftBackM, inCentimetres, driftAtS(rep, -1), drift),
    ...jointCells(rep),
    also === '' ? noneBecause('nothingElse') : { kind: 'words', words: also, atS: stretchedEndS(rep) },
  ];
}
