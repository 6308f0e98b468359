import type { Exercise } from '../../exercises/exercise.ts';
import type { MessageValues } from '../../message/message.ts';
import type { Measured, RepMeasurement } from '../measurement.ts';
import type { Suggestion, SuggestionMessageId } from '../suggestion.ts';
import type { AskedPhase, AskedTempo } from './askedTempo.ts';
import { type PrintedUnit, printed, printedMeasure, surelyWithin } from './certain.ts';
import { atStretchedEnd, duringPhase, eccentricVerb, whereEndIs } from './finding.ts';
import { hasCreaseRule } from './rangeFindings.ts';

/** One rep that meets a criterion with certainty; `room` is what is left to the nearest limit. */
type Met = { readonly rep: RepMeasurement; readonly measured: Measured; readonly room: number };

type Praise = {
  readonly criterion: string;
  readonly measure: { readonly name: string; readonly unit: PrintedUnit };
  /** The rep's measure with its room; null unless it is met with certainty. */
  readonly metBy: (rep: RepMeasurement) => Omit<Met, 'rep'> | null;
  readonly atS: (rep: RepMeasurement) => number;
  readonly message: SuggestionMessageId;
  readonly says: (values: readonly number[]) => MessageValues;
};

function within(measured: Measured | null | undefined, from: number, to: number): Omit<Met, 'rep'> | null {
  if (!measured || !surelyWithin(measured, from, to)) return null;
  const { value, plusMinus } = measured;
  return { measured, room: Math.min(value - plusMinus - from, to - value - plusMinus) };
}

function timesOf(values: readonly number[]): MessageValues {
  const [fromS, toS] = [printed(Math.min(...values), 's'), printed(Math.max(...values), 's')];
  return { fromS, toS, spread: fromS === toS ? 'none' : 'some' };
}

/** The furthest of them in metres, rounded up to whole centimetres. */
const furthest = (values: readonly number[]): number => Math.max(1, ...values.map((m) => Math.ceil(m * 100))) / 100;

/** The largest turn either way, as it is printed; one that rounds to none is told as the smallest that is printed. */
const largestTurn = (values: readonly number[]): number =>
  Math.max(10, printed(Math.max(...values.map(Math.abs)), 'deg'));

function driftPraise({ shape, toleranceM }: Exercise['targets']['path']): Praise[] {
  if (shape === 'free' || shape === 'rail') return [];
  const metBy = ({ driftForwardM: forward, driftBackM: back }: RepMeasurement) =>
    forward === null || back === null || !surelyWithin(forward, -Infinity, toleranceM)
      ? null
      : within(back.value > forward.value ? back : forward, -Infinity, toleranceM);
  return [
    {
      criterion: 'barPath',
      measure: { name: 'drift', unit: 'm' },
      metBy,
      atS: (rep) => duringPhase(rep, 'concentric'),
      message: 'everyPath',
      says: (values) => ({ value: printed(furthest(values), 'm'), limit: printed(toleranceM, 'm') }),
    },
  ];
}

function pausePraise(exercise: Exercise, asked: AskedPhase): Praise[] {
  if (asked.fromS === 0) return [];
  const isHold = exercise.beginsWith === 'hold';
  return [
    {
      criterion: 'pauses',
      measure: { name: isHold ? 'hold' : 'pause, stretched', unit: 's' },
      metBy: ({ durationsS }) => within(durationsS.pauseStretched, asked.fromS, asked.toS),
      atS: atStretchedEnd,
      message: isHold ? 'everyHold' : 'everyPause',
      says: (values) => ({
        ...timesOf(values),
        ...(!isHold && { where: whereEndIs(exercise, 'stretched') }),
        ...asked.says,
      }),
    },
  ];
}

const depthPraise: Praise = {
  criterion: 'depth',
  measure: { name: 'hip crease above the top of the knee', unit: 'm' },
  metBy: ({ joints }) => (joints?.depthOutcome === 'reached' ? within(joints.depthM, -Infinity, 0) : null),
  atS: atStretchedEnd,
  message: 'everyDepth',
  says: (values) => ({ least: Math.max(1, printed(-Math.max(...values), 'm')) }),
};

/** What can be praised of an exercise, what matters most first. */
function praises(exercise: Exercise, asked: AskedTempo): Praise[] {
  if (exercise.beginsWith === 'hold') return pausePraise(exercise, asked.pauseStretched);
  const { headDeg, path } = exercise.targets;
  return [
    ...(hasCreaseRule(exercise) ? [depthPraise] : []),
    {
      criterion: 'eccentricTempo',
      measure: { name: 'eccentric', unit: 's' },
      metBy: ({ durationsS }) => within(durationsS.eccentric, asked.eccentric.fromS, asked.eccentric.toS),
      atS: (rep) => duringPhase(rep, 'eccentric'),
      message: 'everyEccentric',
      says: (values) => ({ verb: eccentricVerb(exercise), ...timesOf(values), ...asked.eccentric.says }),
    },
    ...pausePraise(exercise, asked.pauseStretched),
    ...driftPraise(path),
    {
      criterion: 'headPosition',
      measure: { name: 'head against the trunk', unit: 'deg' },
      metBy: ({ joints }) => within(joints?.headTrunkDeg, -headDeg, headDeg),
      atS: atStretchedEnd,
      message: 'everyHead',
      says: (values) => ({ most: largestTurn(values), limit: printed(headDeg, 'deg') }),
    },
  ];
}

function praiseOf(
  { criterion, measure, metBy, atS, message, says }: Praise,
  reps: readonly RepMeasurement[],
): Suggestion[] {
  const met = reps.flatMap((rep): Met[] => {
    const one = metBy(rep);
    return one === null ? [] : [{ rep, ...one }];
  });
  const [first, ...rest] = met;
  if (first === undefined || met.length < reps.length) return [];
  const best = rest.reduce((most, next) => (next.room > most.room ? next : most), first);
  const { value, plusMinus } = best.measured;
  const widest = Math.max(...met.map(({ measured }) => measured.plusMinus));
  const { within: plusMinusOfAll } = printedMeasure({ value, plusMinus: widest }, measure.unit);
  return [
    {
      id: `${criterion}.met`,
      criterion,
      fault: null,
      severity: 'keep',
      reps: reps.map(({ index }) => index),
      atS: atS(best.rep),
      measure: { ...measure, value, plusMinus },
      message: {
        id: message,
        values: { reps: reps.length, ...says(met.map(({ measured }) => measured.value)), within: plusMinusOfAll },
      },
    },
  ];
}

/** Praise for each criterion that every rep meets with certainty; the last rep may end before its pause. */
export function praiseFor(reps: readonly RepMeasurement[], exercise: Exercise, asked: AskedTempo): Suggestion[] {
  const last = reps.at(-1);
  const paused = reps.filter((rep) => rep !== last || rep.durationsS.pauseStretched !== null);
  return praises(exercise, asked).flatMap((praise) => praiseOf(praise, praise.criterion === 'pauses' ? paused : reps));
}
