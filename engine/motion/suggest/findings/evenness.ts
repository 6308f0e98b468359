import type { Curves, Measured, RepMeasurement, Span } from '../../measurement.ts';
import { certain, type Finding, type Miss, named, type SetToJudge } from '../finding.ts';
import { eccentricWords, percentOf } from '../wording.ts';

/** Share of the eccentric's time that its last third of the way takes at least when it isn't dropped; an even pace takes 33 %. */
const dropLimitPct = 20;

/** How far the speed may fall between two peaks of one eccentric, in percent of the lower peak. */
const dipLimitPct = 50;

/** A second peak below this share of the highest one is settling, not another start. */
const secondPeakShare = 0.25;

/** Samples of a curve within a span; null when one of them was not seen, or there are fewer than five. */
function within(curves: Curves, values: readonly (number | null)[], span: Span) {
  const found: { readonly timeS: number; readonly value: number }[] = [];
  for (const [i, timeS] of curves.timesS.entries()) {
    if (timeS < span.startS || timeS > span.endS) continue;
    const value = values[i] ?? null;
    if (value === null) return null;
    found.push({ timeS, value });
  }
  return found.length < 5 ? null : found;
}

/** Percent of the eccentric's time that the last third of its way takes. */
function lastThirdPct(curves: Curves, rep: RepMeasurement): Measured | null {
  const span = rep.phases.eccentric;
  const time = rep.durationsS.eccentric;
  const heights = span === null ? null : within(curves, curves.heightM, span);
  const [first, last] = [heights?.[0], heights?.at(-1)];
  if (heights === null || first === undefined || last === undefined || !time || !(time.value > 0)) return null;
  const turnM = first.value + ((last.value - first.value) * 2) / 3;
  const before = heights.findLastIndex(({ value }) => Math.abs(value - last.value) > Math.abs(turnM - last.value));
  const [from, to] = [heights[before], heights[before + 1]];
  if (from === undefined || to === undefined) return null;
  const turnS = from.timeS + ((turnM - from.value) / (to.value - from.value)) * (to.timeS - from.timeS);
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

/** Deepest fall of speed between two peaks of the eccentric, in percent of the lower one. */
function dipPct(curves: Curves, rep: RepMeasurement): (Measured & { readonly atS: number }) | null {
  const span = rep.phases.eccentric;
  const samples = span === null ? null : within(curves, curves.speedMps, span);
  const speedPlusMinus = rep.peakConcentricMps?.plusMinus;
  if (samples === null || speedPlusMinus === undefined) return null;
  const speeds = samples.map(({ value }) => Math.abs(value));
  const before = highestSoFar(speeds);
  const after = highestSoFar(speeds.toReversed()).reverse();
  const highest = before.at(-1) ?? 0;
  const dips = samples.flatMap(({ timeS }, i) => {
    const peak = Math.min(before[i] ?? 0, after[i] ?? 0);
    if (!(peak > 0) || peak < secondPeakShare * highest) return [];
    const value = 100 * (1 - (speeds[i] ?? 0) / peak);
    return [{ value, plusMinus: (100 * Math.SQRT2 * speedPlusMinus) / peak, atS: timeS }];
  });
  return dips.reduce<(typeof dips)[number] | null>(
    (worst, dip) => (worst === null || dip.value > worst.value ? dip : worst),
    null,
  );
}

function dropping({ measurement: { curves }, reps, exercise }: SetToJudge): Miss[] {
  const { noun } = eccentricWords(exercise);
  return reps.flatMap((rep) => {
    const share = lastThirdPct(curves, rep);
    if (share === null) return [];
    const beyond = dropLimitPct - share.value;
    return certain({
      rep: rep.index,
      atS: rep.phases.eccentric?.startS ?? rep.startS,
      measure: named('lastThirdPct', share, '%'),
      beyond,
      small: beyond <= 5,
      sentence: `Rep ${rep.index} falls through the last third of the ${noun} in ${percentOf(share)} of its time; an even pace takes 33 %.`,
    });
  });
}

function dipping({ measurement: { curves }, reps, exercise }: SetToJudge): Miss[] {
  const { noun } = eccentricWords(exercise);
  return reps.flatMap((rep) => {
    const dip = dipPct(curves, rep);
    if (dip === null) return [];
    const beyond = dip.value - dipLimitPct;
    return certain({
      rep: rep.index,
      atS: dip.atS,
      measure: named('eccentricDipPct', dip, '%'),
      beyond,
      small: beyond <= 15,
      sentence: `Rep ${rep.index} slows by ${percentOf(dip)} within the ${noun} and speeds up again.`,
    });
  });
}

/** Eccentrics that slow down and speed up on the way, or fall through the last third; where the height tells of the way. */
export const evennessFindings = (set: SetToJudge): Finding[] =>
  set.wanted === null || set.exercise.lowerEnd === 'neither'
    ? []
    : [
        {
          name: 'uneven',
          criterion: 'eccentricTempo',
          faults: ['unevenLowering', 'unevenReturn'],
          misses: dipping(set),
        },
        { name: 'lastPartDrops', criterion: 'eccentricTempo', faults: ['lastPartDrops'], misses: dropping(set) },
      ];
