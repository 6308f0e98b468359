import type { Exercise } from '../../exercises/exercise.ts';
import type { Measured, RepMeasurement, SetMeasurement, Suggestion } from '../measurement.ts';
import type { WantedTempo } from './wantedTempo.ts';

/** What findings are looked for in: one set, its reps by index, and what is asked of it. */
export type SetToJudge = {
  readonly measurement: SetMeasurement;
  readonly reps: readonly RepMeasurement[];
  readonly exercise: Exercise;
  /** Null where no phases are judged: a hold. */
  readonly wanted: WantedTempo | null;
};

/** A rep that misses a limit by more than can be doubted. */
export type Miss = {
  readonly rep: number;
  /** Media seconds of the moment to look at. */
  readonly atS: number;
  readonly measure: Suggestion['measure'];
  /** How far over the limit, in the measure's unit. */
  readonly beyond: number;
  /** So little over it that it is a matter of fine tuning. */
  readonly small: boolean;
  readonly sentence: string;
};

/** One way to miss a criterion, with the reps that do; `faults` by preference, the first that the exercise has counts. */
export type Finding = {
  readonly name: string;
  readonly criterion: string;
  readonly faults: readonly string[];
  readonly misses: readonly Miss[];
};

/** Half of the finest step in which a unit is printed: no finding rests on less than can be read. */
const halfStep = { s: 0.05, m: 0.005, deg: 5, 'm/s': 0.005, '%': 0.5, times: 0 } as const;

/** Whether a value is over a limit (by `beyond`, in its unit) by more than its uncertainty and its printed step. */
export const isCertain = (beyond: number, { plusMinus, unit }: Suggestion['measure']): boolean =>
  beyond > Math.max(plusMinus, halfStep[unit]);

/** A measure with its name and unit. */
export const named = (
  name: string,
  { value, plusMinus }: Measured,
  unit: Suggestion['measure']['unit'],
): Suggestion['measure'] => ({ name, value, plusMinus, unit });

/** The miss itself where it is certain, else nothing. */
export const certain = (miss: Miss): Miss[] => (isCertain(miss.beyond, miss.measure) ? [miss] : []);

/** Media time at which a rep is at its long end, as far as its phases tell. */
export const longEndAtS = ({ phases, startS }: RepMeasurement): number =>
  phases.eccentric?.endS ?? phases.concentric?.startS ?? startS;

/** Media time at which a rep is at its short end, as far as its phases tell. */
export const shortEndAtS = ({ phases, endS }: RepMeasurement): number =>
  phases.concentric?.endS ?? phases.eccentric?.startS ?? endS;
