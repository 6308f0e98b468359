import type { Exercise } from '../../exercises/exercise.ts';
import type { RepMeasurement } from '../measurement.ts';
import type { AskedPhase, AskedTempo } from './askedTempo.ts';
import { printedMeasure, printedOther, surelyAbove, surelyBelow } from './certain.ts';
import { atShortenedEnd, atStretchedEnd, type Finding, type Shown, whereEndIs } from './finding.ts';
import { fading, type Lesser, type RepValue, valuesOf } from './setWide.ts';
import { smallMissS, spreadLimitS } from './slack.ts';

const criterion = 'pauses';

/** Movement patterns whose fault of resting between reps speaks of the shortened end; in the others, of the stretched end. */
const restsAtShortenedEnd: readonly string[] = ['hinge', 'horizontal press', 'lunge', 'sled press', 'squat'];

type PauseEnd = 'stretched' | 'shortened';
type PauseAt = { readonly end: PauseEnd; readonly where: ReturnType<typeof whereEndIs>; readonly asked: AskedPhase };

const pauseOf = (end: PauseEnd) => (end === 'stretched' ? 'pauseStretched' : 'pauseShortened');
const momentOf = (end: PauseEnd, rep: RepMeasurement) =>
  end === 'stretched' ? atStretchedEnd(rep) : atShortenedEnd(rep);
const valuesAt = (reps: readonly RepMeasurement[], end: PauseEnd): RepValue[] =>
  valuesOf(reps, ({ durationsS }) => durationsS[pauseOf(end)]);

const paused = ({ end, where }: PauseAt, { rep, measured }: RepValue, missedBy: number): Shown => ({
  rep,
  missedBy,
  atS: momentOf(end, rep),
  measure: { name: `pause, ${end}`, ...measured, unit: 's' },
  says: { ...printedMeasure(measured, 's'), where },
});

const missing = (values: readonly RepValue[], at: PauseAt, faults: readonly string[]): Finding => ({
  name: at.end === 'stretched' ? 'longPauseMissing' : 'shortPauseMissing',
  criterion,
  faults,
  severity: 'prefer',
  smallMiss: smallMissS(at.asked.fromS),
  shown: values.map((one) => paused(at, one, surelyBelow(one.measured, at.asked.fromS, 's'))),
  message: 'pauseTime',
  asks: at.asked.says,
});

const tooLong = (values: readonly RepValue[], at: PauseAt, faults: readonly string[]): Finding => ({
  name: at.end === 'stretched' ? 'longPauseTooLong' : 'shortPauseTooLong',
  criterion,
  faults,
  severity: 'prefer',
  smallMiss: smallMissS(at.asked.tooLongFromS),
  shown: values.map((one) => paused(at, one, surelyAbove(one.measured, at.asked.tooLongFromS, 's'))),
  message: 'pauseTime',
  asks: at.asked.says,
});

function shrinking(values: readonly RepValue[], at: PauseAt, faults: readonly string[]): Finding {
  const shorter = ({ rep, measured, missedBy, than, gap }: Lesser): Shown => ({
    ...paused(at, { rep, measured }, missedBy),
    measure: { name: `pause, ${at.end}, shorter by`, ...gap, unit: 's' },
    says: {
      ...printedMeasure(measured, 's'),
      where: at.where,
      otherRep: than.rep.index,
      ...printedOther(than.measured, 's'),
    },
  });
  return {
    name: at.end === 'stretched' ? 'longPauseShrinks' : 'shortPauseShrinks',
    criterion,
    faults,
    severity: 'prefer',
    smallMiss: smallMissS(0),
    shown: fading(values, { limitOf: spreadLimitS, unit: 's', cap: at.asked.toS }).map(shorter),
    message: 'pauseShorter',
  };
}

/** The load that turns round more than once at the stretched end. */
function rebounds(reps: readonly RepMeasurement[], { where }: PauseAt): Finding {
  return {
    name: 'rebounds',
    criterion,
    faults: ['reboundsAtLongEnd', 'bouncesOffChest', 'noCatch'],
    severity: 'adjust',
    smallMiss: 0,
    shown: reps.flatMap((rep) =>
      rep.bounces === null
        ? []
        : [
            {
              rep,
              missedBy: Math.max(0, rep.bounces - 1),
              atS: atStretchedEnd(rep),
              measure: { name: 'turns at the stretched end', value: rep.bounces, plusMinus: 0, unit: 'times' as const },
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
  const stretched: PauseAt = {
    end: 'stretched',
    where: whereEndIs(exercise, 'stretched'),
    asked: asked.pauseStretched,
  };
  const shortened: PauseAt = {
    end: 'shortened',
    where: whereEndIs(exercise, 'shortened'),
    asked: asked.pauseShortened,
  };
  const pausesStretched = valuesAt(reps, 'stretched');
  const pausesShortened = valuesAt(reps, 'shortened');
  const begins: PauseEnd = exercise.beginsWith === 'eccentric' ? 'shortened' : 'stretched';
  const spokenOf: PauseEnd = restsAtShortenedEnd.includes(exercise.pattern) ? 'shortened' : 'stretched';
  const rests = (end: PauseEnd) => (end === begins && end === spokenOf ? ['longRestsBetweenReps'] : []);
  return [
    missing(pausesStretched, stretched, ['noLongPause']),
    tooLong(pausesStretched, stretched, rests('stretched')),
    shrinking(pausesStretched, stretched, ['longPauseShrinks', 'pausesShrink']),
    missing(pausesShortened, shortened, ['noShortPause', 'noHold', 'noHoldAtTop', 'noFinishBetweenReps']),
    tooLong(pausesShortened, shortened, rests('shortened')),
    ...(shortened.asked.fromS > 0 ? [shrinking(pausesShortened, shortened, ['holdsShrink', 'pausesShrink'])] : []),
    rebounds(reps, stretched),
  ];
}

/** In a hold nothing but its length is asked. */
export function holdFindings(reps: readonly RepMeasurement[], asked: AskedTempo): Finding[] {
  const at: PauseAt = { end: 'stretched', where: 'stretchedEnd', asked: asked.pauseStretched };
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
  const holds = valuesAt(reps, 'stretched');
  return [
    held({ ...missing(holds, at, ['endsEarly']), severity: 'adjust' }, 'holdTooShort'),
    held(tooLong(holds, at, []), 'holdTooLong'),
  ];
}
