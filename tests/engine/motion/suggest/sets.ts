import type { Exercise } from '../../../../engine/exercises/exercise.ts';
import type { Measured, RepJoints, RepMeasurement, SetMeasurement } from '../../../../engine/motion/measurement.ts';
import { type SuggestRequest, suggest } from '../../../../engine/motion/suggest/suggest.ts';
import { sayMeasuring } from '../../../../engine/wording/sayMeasuring.ts';
import { shippedUnder } from '../../../seeds/shippedCatalogue.ts';

/** Value and half-width of the interval. */
export const pm = (value: number, plusMinus: number): Measured => ({ value, plusMinus });

export const joints = (change: Partial<RepJoints> = {}): RepJoints => ({
  kneeDeg: null,
  hipDeg: null,
  trunkLeanDeg: null,
  shankLeanDeg: null,
  trunkLeanMaxDeg: null,
  headTrunkDeg: null,
  depthM: null,
  depthOutcome: null,
  depthFrom: null,
  backChangeDeg: null,
  unseen: [],
  ...change,
});

/**
 * Rep n of a lift that begins with the eccentric: from 10 n s, 2.5 s to the stretched end, 0.5 s there, 1 s back, 0.5 s at the
 * shortened end. Nothing but its times is measured; change what a test needs.
 */
export function rep(index: number, change: Partial<RepMeasurement> = {}): RepMeasurement {
  const startS = 10 * index;
  return {
    index,
    startS,
    endS: startS + 4.5,
    phases: {
      eccentric: { startS, endS: startS + 2.5 },
      pauseStretched: { startS: startS + 2.5, endS: startS + 3 },
      concentric: { startS: startS + 3, endS: startS + 4 },
      pauseShortened: { startS: startS + 4, endS: startS + 4.5 },
    },
    durationsS: { eccentric: null, pauseStretched: null, concentric: null, pauseShortened: null },
    sureness: 1,
    doubts: [],
    manualEdges: [],
    romM: null,
    reach: null,
    meanConcentricMps: null,
    peakConcentricMps: null,
    peakSpeedAtS: null,
    driftForwardM: null,
    driftBackM: null,
    largestDeviation: null,
    bounces: null,
    downOnWayUpM: null,
    joints: null,
    ...change,
  };
}

type Durations = RepMeasurement['durationsS'];

/** Rep n of which only these times are known. */
export const timed = (index: number, durations: Partial<Durations>): RepMeasurement =>
  rep(index, {
    durationsS: { eccentric: null, pauseStretched: null, concentric: null, pauseShortened: null, ...durations },
  });

/** Reps 1, 2, 3 ... whose eccentrics take so many seconds, each ± 0.1 s. */
export const eccentrics = (...seconds: readonly number[]): RepMeasurement[] =>
  seconds.map((value, place) => timed(place + 1, { eccentric: pm(value, 0.1) }));

/** The same for the pause at the stretched end. */
export const pausesStretched = (...seconds: readonly number[]): RepMeasurement[] =>
  seconds.map((value, place) => timed(place + 1, { pauseStretched: pm(value, 0.1) }));

/** Reps over so many metres, each ± 0.5 cm. */
export const ranges = (...metres: readonly number[]): RepMeasurement[] =>
  metres.map((value, place) => rep(place + 1, { romM: pm(value, 0.005) }));

export function setOf(reps: readonly RepMeasurement[], curves: Partial<SetMeasurement['curves']> = {}): SetMeasurement {
  return {
    calibration: null,
    follows: 'disc',
    followsBecause: 'discMovesWithLifter',
    track: { frames: 100, lost: 0, meanConfidence: 1 },
    facing: 'right',
    nearSide: 'right',
    view: null,
    reps,
    offered: [],
    set: { speedLossPct: null, romSpreadM: null, eccentricSpreadS: null },
    curves: {
      timesS: [],
      positionPx: [],
      heightM: [],
      forwardM: [],
      speedMps: [],
      heightPlusMinusM: 0.001,
      ...curves,
    },
    warnings: [],
  };
}

export const shipped = shippedUnder(2);
const first = shippedUnder(1);

/** An exercise that ships, as a version of the rubric judges it. */
export function shippedExercise(id: string, version: 1 | 2 = 2): Exercise {
  const found = (version === 1 ? first : shipped).exercises.find((exercise) => exercise.id === id);
  if (!found) throw new Error(`No exercise ${id}.`);
  return found;
}

/** What a set proposes, each in an English sentence. */
export const saidBy = (request: SuggestRequest) =>
  suggest(request).map(({ message, ...suggestion }) => ({ ...suggestion, sentence: sayMeasuring(message, 'en') }));

/** What a set of back squats seen from the side proposes for growth, without a plan; change what a test needs. */
export const suggestionsFor = (reps: readonly RepMeasurement[], change: Partial<SuggestRequest> = {}) =>
  saidBy({
    measurement: setOf(reps),
    exercise: shippedExercise('back-squat'),
    goal: 'growth',
    plan: null,
    rubricCriteria: shipped.rubric.criteria.map(({ id }) => id),
    view: 'side',
    ...change,
  });

/** What is to be mended, without the praise. */
export const toMend = (...given: Parameters<typeof suggestionsFor>) =>
  suggestionsFor(...given).filter(({ severity }) => severity !== 'keep');
