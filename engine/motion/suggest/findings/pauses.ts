import type { Exercise } from '../../../exercises/exercise.ts';
import type { RepMeasurement } from '../../measurement.ts';
import { certain, type Finding, longEndAtS, type Miss, named, type SetToJudge, shortEndAtS } from '../finding.ts';
import { fallOver } from '../trend.ts';
import { seconds, secondsInterval, secondsOf } from '../wording.ts';
import { slackS } from './slack.ts';

type Pause = 'longPause' | 'shortPause';

const atOf = { longPause: longEndAtS, shortPause: shortEndAtS };
const nameOf = { longPause: 'longPauseS', shortPause: 'shortPauseS' };

/** The end and where it is: "the long end (bottom, the deepest point)". */
const endWords = ({ longEnd, shortEnd }: Exercise, pause: Pause): string =>
  `the ${pause === 'longPause' ? 'long' : 'short'} end (${pause === 'longPause' ? longEnd : shortEnd})`;

/** Reps that pause less than asked, where a pause is asked; half of it or more is a small miss. */
function missing({ reps, exercise, wanted }: SetToJudge, pause: Pause): Miss[] {
  if (wanted === null || wanted[pause].fromS === 0) return [];
  const { fromS, words } = wanted[pause];
  return reps.flatMap((rep) => {
    const time = rep.durationsS[pause];
    if (time === null) return [];
    return certain({
      rep: rep.index,
      atS: atOf[pause](rep),
      measure: named(nameOf[pause], time, 's'),
      beyond: fromS - time.value,
      small: time.value >= fromS / 2,
      sentence: `Rep ${rep.index} pauses ${secondsOf(time)} at ${endWords(exercise, pause)}; ${words}.`,
    });
  });
}

/** Reps that pause longer than asked; up to a second over it is a small miss. */
function tooLong({ reps, exercise, wanted }: SetToJudge, pause: Pause): Miss[] {
  if (wanted === null) return [];
  const { toS, words } = wanted[pause];
  return reps.flatMap((rep) => {
    const time = rep.durationsS[pause];
    if (time === null) return [];
    const beyond = time.value - toS - slackS(toS);
    return certain({
      rep: rep.index,
      atS: atOf[pause](rep),
      measure: named(nameOf[pause], time, 's'),
      beyond,
      small: beyond <= 1,
      sentence: `Rep ${rep.index} rests ${secondsOf(time)} at ${endWords(exercise, pause)}; ${words}.`,
    });
  });
}

/** Pauses that shrink until the last one is shorter than asked. */
function shrinking({ reps, exercise, wanted }: SetToJudge, pause: Pause): Miss[] {
  const timeOf = (rep: RepMeasurement) => rep.durationsS[pause];
  const time = reps.map(timeOf).findLast((one) => one !== null);
  if (wanted === null || !time) return [];
  const { fromS, words } = wanted[pause];
  const trend = fallOver(reps, timeOf);
  if (trend === null || !(fromS - time.value > time.plusMinus)) return [];
  const ends = `from ${seconds(trend.first)} to ${seconds(Math.max(0, trend.last))} (${secondsInterval(trend.fall)})`;
  const sentence = `The pause at ${endWords(exercise, pause)} shrinks over the set, ${ends}; ${words}.`;
  return trend.reps.flatMap((rep) =>
    certain({
      rep: rep.index,
      atS: atOf[pause](rep),
      measure: named(`${pause}FallS`, trend.fall, 's'),
      beyond: trend.beyond,
      small: trend.beyond <= trend.first * 0.1,
      sentence,
    }),
  );
}

const restsAtShortEnd = new Set(['hinge', 'horizontal press', 'lunge', 'squat', 'sled press']);
const exceptions = new Set(['pike-push-up', 'handstand-push-up']);

/** The end at which the exercise's own fault of long rests is meant. */
const restEnd = ({ pattern, id }: Exercise): Pause =>
  restsAtShortEnd.has(pattern) || exceptions.has(id) ? 'shortPause' : 'longPause';

/** Pauses that are missing, too long, or shrink, at either end. */
export function pauseFindings(set: SetToJudge): Finding[] {
  const rests = (pause: Pause) => (restEnd(set.exercise) === pause ? ['longRestsBetweenReps'] : []);
  const finding = (name: string, faults: readonly string[], misses: readonly Miss[]): Finding => ({
    name,
    criterion: 'pauses',
    faults,
    misses,
  });
  return [
    finding('longPauseMissing', ['noLongPause', 'noCatch'], missing(set, 'longPause')),
    finding('longPauseTooLong', rests('longPause'), tooLong(set, 'longPause')),
    finding('longPauseShrinks', ['longPauseShrinks', 'pausesShrink'], shrinking(set, 'longPause')),
    finding(
      'shortPauseMissing',
      ['noHoldAtTop', 'noShortPause', 'noHold', 'noFinishBetweenReps'],
      missing(set, 'shortPause'),
    ),
    finding('shortPauseTooLong', rests('shortPause'), tooLong(set, 'shortPause')),
    finding('shortPauseShrinks', ['holdsShrink', 'pausesShrink'], shrinking(set, 'shortPause')),
  ];
}
