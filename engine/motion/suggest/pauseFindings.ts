import type { Exercise } from '../../exercises/exercise.ts';
import type { RepMeasurement } from '../measurement.ts';
import type { AskedPhase, AskedTempo } from './askedTempo.ts';
import { printedMeasure, printedOther, surelyAbove, surelyBelow } from './certain.ts';
import { atLongEnd, atShortEnd, type Finding, type Shown, whereEndIs } from './finding.ts';
import { fading, type Lesser, type RepValue, valuesOf } from './setWide.ts';
import { smallMissS, spreadLimitS } from './slack.ts';

const criterion = 'pauses';

/** Movement patterns whose fault of resting between reps speaks of the short end; in the others, of the long end. */
const restsAtShortEnd: readonly string[] = ['hinge', 'horizontal press', 'lunge', 'sled press', 'squat'];

type PauseEnd = 'long' | 'short';
type PauseAt = { readonly end: PauseEnd; readonly where: ReturnType<typeof whereEndIs>; readonly asked: AskedPhase };

const pauseOf = (end: PauseEnd) => (end === 'long' ? 'longPause' : 'shortPause');
const momentOf = (end: PauseEnd, rep: RepMeasurement) => (end === 'long' ? atLongEnd(rep) : atShortEnd(rep));
const valuesAt = (reps: readonly RepMeasurement[], end: PauseEnd): RepValue[] =>
  valuesOf(reps, ({ durationsS }) => durationsS[pauseOf(end)]);

const paused = ({ end, where }: PauseAt, { rep, measured }: RepValue, missedBy: number): Shown => ({
  rep,
  missedBy,
  atS: momentOf(end, rep),
  measure: { name: `${end} pause`, ...measured, unit: 's' },
  says: { ...printedMeasure(measured, 's'), where },
});

const missing = (values: readonly RepValue[], at: PauseAt, faults: readonly string[]): Finding => ({
  name: at.end === 'long' ? 'longPauseMissing' : 'shortPauseMissing',
  criterion,
  faults,
  weight: 'prefer',
  smallMiss: smallMissS(at.asked.fromS),
  shown: values.map((one) => paused(at, one, surelyBelow(one.measured, at.asked.fromS, 's'))),
  message: 'pauseTime',
  asks: at.asked.says,
});

const tooLong = (values: readonly RepValue[], at: PauseAt, faults: readonly string[]): Finding => ({
  name: at.end === 'long' ? 'longPauseTooLong' : 'shortPauseTooLong',
  criterion,
  faults,
  weight: 'prefer',
  smallMiss: smallMissS(at.asked.tooLongFromS),
  shown: values.map((one) => paused(at, one, surelyAbove(one.measured, at.asked.tooLongFromS, 's'))),
  message: 'pauseTime',
  asks: at.asked.says,
});

function shrinking(values: readonly RepValue[], at: PauseAt, faults: readonly string[]): Finding {
  const shorter = ({ rep, measured, missedBy, than, gap }: Lesser): Shown => ({
    ...paused(at, { rep, measured }, missedBy),
    measure: { name: `${at.end} pause shorter by`, ...gap, unit: 's' },
    says: {
      ...printedMeasure(measured, 's'),
      where: at.where,
      otherRep: than.rep.index,
      ...printedOther(than.measured, 's'),
    },
  });
  return {
    name: at.end === 'long' ? 'longPauseShrinks' : 'shortPauseShrinks',
    criterion,
    faults,
    weight: 'prefer',
    smallMiss: smallMissS(0),
    shown: fading(values, { limitOf: spreadLimitS, unit: 's', cap: at.asked.toS }).map(shorter),
    message: 'pauseShorter',
  };
}

/** The load that turns round more than once at the long end. */
function rebounds(reps: readonly RepMeasurement[], { where }: PauseAt): Finding {
  return {
    name: 'rebounds',
    criterion,
    faults: ['reboundsAtLongEnd', 'bouncesOffChest', 'noCatch'],
    weight: 'adjust',
    smallMiss: 0,
    shown: reps.flatMap((rep) =>
      rep.bounces === null
        ? []
        : [
            {
              rep,
              missedBy: Math.max(0, rep.bounces - 1),
              atS: atLongEnd(rep),
              measure: { name: 'turns at the long end', value: rep.bounces, plusMinus: 0, unit: 'times' as const },
              says: { times: rep.bounces, where },
            },
          ],
    ),
    message: 'turnsRound',
  };
}

/**
 * Pauses that are missing, too long or shrinking at either end, and rebounds. Resting between reps is resting at the end
 * at which the exercise begins.
 */
export function pauseFindings(reps: readonly RepMeasurement[], exercise: Exercise, asked: AskedTempo): Finding[] {
  const long: PauseAt = { end: 'long', where: whereEndIs(exercise, 'long'), asked: asked.longPause };
  const short: PauseAt = { end: 'short', where: whereEndIs(exercise, 'short'), asked: asked.shortPause };
  const longPauses = valuesAt(reps, 'long');
  const shortPauses = valuesAt(reps, 'short');
  const begins: PauseEnd = exercise.beginsWith === 'eccentric' ? 'short' : 'long';
  const spokenOf: PauseEnd = restsAtShortEnd.includes(exercise.pattern) ? 'short' : 'long';
  const rests = (end: PauseEnd) => (end === begins && end === spokenOf ? ['longRestsBetweenReps'] : []);
  return [
    missing(longPauses, long, ['noLongPause']),
    tooLong(longPauses, long, rests('long')),
    shrinking(longPauses, long, ['longPauseShrinks', 'pausesShrink']),
    missing(shortPauses, short, ['noShortPause', 'noHold', 'noHoldAtTop', 'noFinishBetweenReps']),
    tooLong(shortPauses, short, rests('short')),
    ...(short.asked.fromS > 0 ? [shrinking(shortPauses, short, ['holdsShrink', 'pausesShrink'])] : []),
    rebounds(reps, long),
  ];
}

/** In a hold nothing but its length is asked. */
export function holdFindings(reps: readonly RepMeasurement[], asked: AskedTempo): Finding[] {
  const at: PauseAt = { end: 'long', where: 'longEnd', asked: asked.longPause };
  const held = (finding: Finding, name: string): Finding => ({
    ...finding,
    name,
    message: 'holdTime',
    shown: finding.shown.map((one) => ({
      ...one,
      measure: { ...one.measure, name: 'hold' },
      says: printedMeasure(one.measure, 's'),
    })),
  });
  const holds = valuesAt(reps, 'long');
  return [
    held({ ...missing(holds, at, ['endsEarly']), weight: 'adjust' }, 'holdTooShort'),
    held(tooLong(holds, at, []), 'holdTooLong'),
  ];
}
