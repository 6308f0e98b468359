import type { Measured, RepMeasurement, Suggestion } from '../measurement.ts';
import { longEndAtS, named, type SetToJudge } from './finding.ts';
import type { WantedSpan } from './wantedTempo.ts';
import { centimetres, centimetresOf, degreesOf, eccentricWords, seconds } from './wording.ts';

/** One rep that meets a criterion beyond doubt, and by how much. */
type Met = { readonly rep: RepMeasurement; readonly margin: number; readonly measure: Suggestion['measure'] };

type Praise = {
  readonly criterion: string;
  readonly met: (rep: RepMeasurement) => Omit<Met, 'rep'> | null;
  readonly sentence: (mets: readonly Met[], best: Met) => string;
};

/** Distance of the whole interval from the nearer limit; null when it isn't inside both. */
function marginWithin({ value, plusMinus }: Measured, from: number, to: number): number | null {
  const margin = Math.min(value - plusMinus - from, to - value - plusMinus);
  return margin >= 0 ? margin : null;
}

const metTime = (time: Measured | null, wanted: WantedSpan | undefined, name: string): Omit<Met, 'rep'> | null => {
  if (time === null || wanted === undefined || !(wanted.fromS > 0)) return null;
  const margin = marginWithin(time, wanted.fromS, wanted.toS);
  return margin === null ? null : { margin, measure: named(name, time, 's') };
};

const endsOf = (mets: readonly Met[]): string => {
  const values = mets.map(({ measure }) => measure.value);
  const [low, high] = [seconds(Math.min(...values)), seconds(Math.max(...values))];
  return low === high ? low : `${low} to ${high}`;
};

/** What may be praised, the most telling first. */
function praisesFor({ exercise, wanted }: SetToJudge): Praise[] {
  const { path, headDeg, depth } = exercise.targets;
  const hasLine = path.shape !== 'free' && path.shape !== 'rail';
  return [
    {
      criterion: 'depth',
      met: ({ joints }) =>
        joints?.depthOutcome === 'reached' && joints.depthM !== null && /hip crease/i.test(depth)
          ? { margin: -joints.depthM.value, measure: named('depthM', joints.depthM, 'm') }
          : null,
      sentence: (mets, { rep, measure }) => {
        const below = centimetresOf({ value: -measure.value, plusMinus: measure.plusMinus });
        return `The hip crease goes below the top of the knee on all ${mets.length} reps; on rep ${rep.index} by ${below}.`;
      },
    },
    {
      criterion: 'eccentricTempo',
      met: ({ durationsS }) => metTime(durationsS.eccentric, wanted?.eccentric, 'eccentricS'),
      sentence: (mets) =>
        `All ${mets.length} reps ${eccentricWords(exercise).verb.slice(0, -1)} in ${endsOf(mets)}; ${wanted?.eccentric.words}.`,
    },
    {
      criterion: 'pauses',
      met: ({ durationsS }) => metTime(durationsS.longPause, wanted?.longPause, 'longPauseS'),
      sentence: (mets) =>
        `All ${mets.length} reps pause ${endsOf(mets)} at the long end (${exercise.longEnd}); ${wanted?.longPause.words}.`,
    },
    {
      criterion: 'barPath',
      met: ({ largestDeviation }) => {
        if (!hasLine || largestDeviation === null) return null;
        const margin = marginWithin(largestDeviation.m, -path.toleranceM, path.toleranceM);
        return margin === null ? null : { margin, measure: named('largestDeviationM', largestDeviation.m, 'm') };
      },
      sentence: (mets) => {
        const furthest = Math.max(...mets.map(({ measure }) => Math.abs(measure.value)));
        return `The load stays within ${centimetres(Math.ceil(furthest * 100) / 100)} of its expected line on all ${mets.length} reps; up to ${centimetres(path.toleranceM)} is fine.`;
      },
    },
    {
      criterion: 'headPosition',
      met: ({ joints }) => {
        const change = joints?.headTrunkDeg ?? null;
        const margin = change === null ? null : marginWithin(change, -headDeg, headDeg);
        return change === null || margin === null ? null : { margin, measure: named('headTrunkDeg', change, 'deg') };
      },
      sentence: (mets, { measure }) =>
        `The head keeps its angle against the trunk on all ${mets.length} reps, to ${degreesOf(measure)}; up to ${headDeg}° is fine.`,
    },
  ];
}

/** At most this many praises a clip. */
const mostPraises = 2;

/** Praise for criteria that every rep (of two or more) meets beyond doubt, of those that `mayPraise` lets through; two at most. */
export function praise(set: SetToJudge, mayPraise: (criterion: string) => boolean): Suggestion[] {
  const { reps } = set;
  if (reps.length < 2) return [];
  return praisesFor(set)
    .filter(({ criterion }) => mayPraise(criterion))
    .flatMap(({ criterion, met, sentence }): Suggestion[] => {
      const mets = reps.flatMap((rep): Met[] => {
        const one = met(rep);
        return one === null ? [] : [{ rep, ...one }];
      });
      const best = mets.reduce<Met | null>(
        (most, one) => (most === null || one.margin > most.margin ? one : most),
        null,
      );
      if (best === null || mets.length < reps.length) return [];
      return [
        {
          id: `${criterion}.wellMet`,
          criterion,
          fault: null,
          weight: 'keep',
          reps: reps.map(({ index }) => index),
          atS: longEndAtS(best.rep),
          measure: best.measure,
          sentence: sentence(mets, best),
        },
      ];
    })
    .slice(0, mostPraises);
}
