import type { Measured, RepMeasurement } from '../../measurement.ts';
import { certain, type Finding, type Miss, named, type SetToJudge } from '../finding.ts';
import { fallOver } from '../trend.ts';
import { eccentricWords, seconds, secondsInterval, secondsOf } from '../wording.ts';
import { slackS } from './slack.ts';

const eccentricOf = (rep: RepMeasurement): Measured | null => rep.durationsS.eccentric;
const startOf = ({ phases, startS }: RepMeasurement): number => phases.eccentric?.startS ?? startS;

/** Reps outside what is asked; a miss of 15 % below, or 25 % above, is small. */
function outside({ reps, exercise, wanted }: SetToJudge, side: 'quick' | 'slow'): Miss[] {
  if (wanted === null || wanted.eccentric.toS === 0) return [];
  const { fromS, toS, words } = wanted.eccentric;
  const limitS = side === 'quick' ? fromS : toS + slackS(toS);
  return reps.flatMap((rep) => {
    const time = eccentricOf(rep);
    if (time === null) return [];
    const beyond = side === 'quick' ? limitS - time.value : time.value - limitS;
    return certain({
      rep: rep.index,
      atS: startOf(rep),
      measure: named('eccentricS', time, 's'),
      beyond,
      small: beyond <= limitS * (side === 'quick' ? 0.15 : 0.25),
      sentence: `Rep ${rep.index} ${eccentricWords(exercise).verb} in ${secondsOf(time)}; ${words}.`,
    });
  });
}

/** Reps that get quicker and quicker until the last one leaves what is asked. */
function fading({ reps, exercise, wanted }: SetToJudge): Miss[] {
  const last = reps.at(-1);
  const time = last === undefined ? null : eccentricOf(last);
  if (wanted === null || time === null) return [];
  const { fromS, words } = wanted.eccentric;
  const trend = fallOver(reps, eccentricOf);
  if (trend === null || !(fromS - time.value > time.plusMinus)) return [];
  const { first, fall } = trend;
  const ends = `from ${seconds(first)} to ${seconds(trend.last)} (${secondsInterval(fall)})`;
  const sentence = `The ${eccentricWords(exercise).noun} gets quicker over the set, ${ends}; ${words}.`;
  return trend.reps.flatMap((rep) =>
    certain({
      rep: rep.index,
      atS: startOf(rep),
      measure: named('eccentricFallS', fall, 's'),
      beyond: trend.beyond,
      small: trend.beyond <= first * 0.1,
      sentence,
    }),
  );
}

/** Eccentrics too quick, slower than useful, and quickening over the set. */
export const eccentricFindings = (set: SetToJudge): Finding[] => [
  {
    name: 'quick',
    criterion: 'eccentricTempo',
    faults: ['quickLowering', 'quickReturn'],
    misses: outside(set, 'quick'),
  },
  { name: 'slow', criterion: 'eccentricTempo', faults: ['slowerThanUseful'], misses: outside(set, 'slow') },
  { name: 'fades', criterion: 'eccentricTempo', faults: ['tempoFades'], misses: fading(set) },
];
