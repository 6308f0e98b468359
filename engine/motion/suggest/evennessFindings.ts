import type { Exercise } from '../../exercises/exercise.ts';
import type { Curves, Measured, RepMeasurement, Span } from '../measurement.ts';
import { printedMeasure, surelyAbove, surelyBelow } from './certain.ts';
import { duringPhase, eccentricVerb, type Finding, type Shown } from './finding.ts';
import { dipLimitPct, dropLimitPct, smallDipMissPct, smallDropMissPct } from './slack.ts';

const criterion = 'eccentricTempo';

/** A second peak below this share of the highest one is settling, not another start. */
const secondPeakShare = 0.25;
/** Within this share of the way from either end, slowing is setting off or settling. */
const endShare = 0.15;
/** A speed is the mean over so long: a shorter slowing is no fault, and hardly shows on film. */
const stretchS = 0.25;
/** The largest of some twenty normal errors is as far out, nine times in ten, as so many half-widths of one. */
const manyLooks = 1.6;

type Sample = { readonly timeS: number; readonly value: number };

/** Samples of a curve within a span; null when one of them was not seen, or there are fewer than five. */
function within(curves: Curves, values: readonly (number | null)[], span: Span): readonly Sample[] | null {
  const found: Sample[] = [];
  for (const [i, timeS] of curves.timesS.entries()) {
    if (timeS < span.startS || timeS > span.endS) continue;
    const value = values[i] ?? null;
    if (value === null) return null;
    found.push({ timeS, value });
  }
  return found.length < 5 ? null : found;
}

/** Percent of the eccentric's time that the last third of its range takes. */
function lastThirdPct(curves: Curves, rep: RepMeasurement): Measured | null {
  const span = rep.phases.eccentric;
  const time = rep.durationsS.eccentric;
  const heights = span === null ? null : within(curves, curves.heightM, span);
  const [first, last] = [heights?.[0], heights?.at(-1)];
  if (heights === null || first === undefined || last === undefined || !time || !(time.value > 0)) return null;
  const leftM = Math.abs(last.value - first.value) / 3;
  const before = heights.findLastIndex(({ value }) => Math.abs(value - last.value) > leftM);
  const [from, to] = [heights[before], heights[before + 1]];
  if (from === undefined || to === undefined) return null;
  const [fromM, toM] = [Math.abs(from.value - last.value), Math.abs(to.value - last.value)];
  const turnS = from.timeS + ((fromM - leftM) / (fromM - toM)) * (to.timeS - from.timeS);
  const value = (100 * (last.timeS - turnS)) / (last.timeS - first.timeS);
  return { value, plusMinus: (100 * time.plusMinus) / time.value };
}

function highestSoFar(values: readonly number[]): number[] {
  let highest = Number.NEGATIVE_INFINITY;
  return values.map((value) => {
    highest = Math.max(highest, value);
    return highest;
  });
}

type Verb = ReturnType<typeof eccentricVerb>;
type Dip = Measured & { readonly atS: number };

/** A mean speed within the eccentric, and the share of the way that lies before it. */
type Stretch = { readonly atS: number; readonly speedMps: number; readonly wayShare: number };

/** How far the load has moved by each sample, in metres. */
function movedBy(samples: readonly Sample[]): number[] {
  let sum = 0;
  return samples.map(({ timeS, value }, i) => {
    const before = samples[i - 1];
    if (before !== undefined) sum += ((value + before.value) / 2) * (timeS - before.timeS);
    return sum;
  });
}

/** Mean speeds over stretches of a set length, one about each sample that has as much on either side. */
function stretchesOf(samples: readonly Sample[]): Stretch[] {
  const moved = movedBy(samples);
  const wholeM = Math.abs(moved.at(-1) ?? 0);
  return samples.flatMap(({ timeS }, i) => {
    const from = samples.findLastIndex((other) => other.timeS <= timeS - stretchS / 2);
    const to = samples.findIndex((other) => other.timeS >= timeS + stretchS / 2);
    const [first, last] = [samples[from], samples[to]];
    if (first === undefined || last === undefined || !(wholeM > 0)) return [];
    const wayM = Math.abs((moved[to] ?? 0) - (moved[from] ?? 0));
    return [{ atS: timeS, speedMps: wayM / (last.timeS - first.timeS), wayShare: Math.abs(moved[i] ?? 0) / wholeM }];
  });
}

/**
 * Deepest fall of speed between two peaks of the eccentric, in percent of the lower one. It lasts, so speeds are means over a
 * stretch; and it lies well within the way: what the load does near either end is setting off and settling. Its half-width
 * allows for the deepest of many stretches being looked for.
 */
function deepestDip(curves: Curves, rep: RepMeasurement): Dip | null {
  const span = rep.phases.eccentric;
  const samples = span === null ? null : within(curves, curves.speedMps, span);
  const { heightPlusMinusM } = curves;
  if (samples === null || heightPlusMinusM === null) return null;
  const stretches = stretchesOf(samples);
  const speeds = stretches.map(({ speedMps }) => speedMps);
  const before = highestSoFar(speeds);
  const after = highestSoFar(speeds.toReversed()).reverse();
  const highest = before.at(-1) ?? 0;
  const speedPlusMinus = (manyLooks * Math.SQRT2 * heightPlusMinusM) / stretchS;
  let deepest: Dip | null = null;
  for (const [i, { atS, speedMps, wayShare }] of stretches.entries()) {
    const peak = Math.min(before[i] ?? 0, after[i] ?? 0);
    if (!(peak > 0) || peak < secondPeakShare * highest || wayShare < endShare || wayShare > 1 - endShare) continue;
    const value = 100 * (1 - speedMps / peak);
    if (deepest === null || value > deepest.value) {
      deepest = { value, plusMinus: (100 * Math.SQRT2 * speedPlusMinus) / peak, atS };
    }
  }
  return deepest;
}

function dipped(curves: Curves, rep: RepMeasurement, verb: Verb): Shown[] {
  const dip = deepestDip(curves, rep);
  if (dip === null) return [];
  const { atS, ...measured } = dip;
  return [
    {
      rep,
      missedBy: surelyAbove(measured, dipLimitPct, '%'),
      atS,
      measure: { name: 'speed lost within the eccentric', ...measured, unit: '%' },
      says: { verb, ...printedMeasure(measured, '%') },
    },
  ];
}

function dropped(curves: Curves, rep: RepMeasurement, verb: Verb): Shown[] {
  const share = lastThirdPct(curves, rep);
  if (share === null) return [];
  return [
    {
      rep,
      missedBy: surelyBelow(share, dropLimitPct, '%'),
      atS: duringPhase(rep, 'eccentric'),
      measure: { name: 'time of the last third', ...share, unit: '%' },
      says: { verb, ...printedMeasure(share, '%') },
    },
  ];
}

/** Eccentrics that slow down and speed up again, or drop through the last third; only where the load moves up and down. */
export function evennessFindings(reps: readonly RepMeasurement[], exercise: Exercise, curves: Curves): Finding[] {
  if (exercise.lowerEnd === 'neither') return [];
  const verb = eccentricVerb(exercise);
  return [
    {
      name: 'uneven',
      criterion,
      faults: ['unevenLowering', 'unevenReturn'],
      severity: 'prefer',
      smallMiss: smallDipMissPct,
      shown: reps.flatMap((rep) => dipped(curves, rep, verb)),
      message: 'speedDips',
    },
    {
      name: 'lastPartDrops',
      criterion,
      faults: ['lastPartDrops'],
      severity: 'adjust',
      smallMiss: smallDropMissPct,
      shown: reps.flatMap((rep) => dropped(curves, rep, verb)),
      message: 'lastThirdDrops',
    },
  ];
}
