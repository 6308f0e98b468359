import type { Exercise } from '../../../exercises/exercise.ts';
import type { Measured, RepMeasurement } from '../../measurement.ts';
import { certain, type Finding, longEndAtS, type Miss, named, type SetToJudge } from '../finding.ts';
import { fallOver } from '../trend.ts';
import { centimetres, centimetresInterval, centimetresOf } from '../wording.ts';

const rangeOf = (rep: RepMeasurement): Measured | null => rep.romM;

/** Range that may differ between reps: a tenth of the set's middle rep, at least 3 cm (chosen here, no source). */
const freeM = (middleM: number): number => Math.max(0.03, middleM / 10);

/** Only a rule that speaks of the hip crease is judged by it. */
const hasCreaseRule = ({ targets }: Exercise): boolean => /hip crease/i.test(targets.depth);

/** Reps whose hip crease stays above the top of the knee; up to 2 cm is a small miss. */
function short({ reps, exercise }: SetToJudge): Miss[] {
  if (!hasCreaseRule(exercise)) return [];
  return reps.flatMap((rep) => {
    const depth = rep.joints?.depthM ?? null;
    if (depth === null || rep.joints?.depthOutcome !== 'short') return [];
    return certain({
      rep: rep.index,
      atS: longEndAtS(rep),
      measure: named('depthM', depth, 'm'),
      beyond: depth.value,
      small: depth.value <= 0.02,
      sentence: `On rep ${rep.index} the hip crease stays ${centimetresOf(depth)} above the top of the knee.`,
    });
  });
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? upper)) / 2;
}

/** Reps that go less far, or further, than the set's middle rep; up to 2 cm over what is free is a small miss. */
function varying({ reps }: SetToJudge): Miss[] {
  const known = reps.flatMap((rep) => (rep.romM === null ? [] : [{ rep, range: rep.romM }]));
  if (known.length < 3) return [];
  const middleM = median(known.map(({ range }) => range.value));
  return known.flatMap(({ rep, range }) => {
    const beyond = Math.abs(range.value - middleM) - freeM(middleM);
    return certain({
      rep: rep.index,
      atS: longEndAtS(rep),
      measure: named('romM', range, 'm'),
      beyond,
      small: beyond <= 0.02,
      sentence: `Rep ${rep.index} covers ${centimetresOf(range)}; the set's middle rep covers ${centimetres(middleM)}.`,
    });
  });
}

/** Range that gets smaller from rep to rep. */
function fading({ reps }: SetToJudge): Miss[] {
  const trend = fallOver(reps, rangeOf, 0.03);
  if (trend === null) return [];
  const ends = `from ${centimetres(trend.first)} to ${centimetres(trend.last)} (${centimetresInterval(trend.fall)})`;
  return trend.reps.flatMap((rep) =>
    certain({
      rep: rep.index,
      atS: longEndAtS(rep),
      measure: named('romFallM', trend.fall, 'm'),
      beyond: trend.beyond,
      small: trend.beyond <= 0.02,
      sentence: `The range gets smaller over the set, ${ends}.`,
    }),
  );
}

/** Depth not reached, range that differs from rep to rep, range that fades: the last takes the place of the one before it. */
export function rangeFindings(set: SetToJudge): Finding[] {
  const fades = fading(set);
  return [
    { name: 'short', criterion: 'depth', faults: ['shortOfDepth', 'shortAtBottom'], misses: short(set) },
    { name: 'fades', criterion: 'depth', faults: ['depthFades', 'rangeFades'], misses: fades },
    { name: 'varies', criterion: 'depth', faults: ['depthVaries'], misses: fades.length > 0 ? [] : varying(set) },
  ];
}
