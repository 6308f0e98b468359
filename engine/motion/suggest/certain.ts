import type { Measured } from '../measurement.ts';

/** Units that are printed with a number and ±, each in steps that the measures can bear. */
export type PrintedUnit = 's' | 'm' | 'deg' | '%';

const steps = { s: 0.1, m: 0.01, deg: 10, '%': 1 } as const;
const inSteps = (value: number, unit: PrintedUnit) => value / steps[unit];
/** Smaller than any measure, larger than what arithmetic in binary leaves over. */
const dust = 1e-9;

/**
 * How far a measure lies above a limit, in its unit; 0 unless the limit is outside its interval and the number still
 * lies above the limit as it is printed.
 */
export function surelyAbove({ value, plusMinus }: Measured, limit: number, unit: PrintedUnit): number {
  const missedBy = value - limit;
  const reads = Math.round(inSteps(value, unit)) > inSteps(limit, unit) + dust;
  return missedBy > plusMinus + dust && reads ? missedBy : 0;
}

/** The same below a limit: 0, or how far below. */
export const surelyBelow = ({ value, plusMinus }: Measured, limit: number, unit: PrintedUnit): number =>
  surelyAbove({ value: -value, plusMinus }, -limit, unit);

/** `one` less `other`, with the interval that no two true values within theirs can leave. */
export const difference = (one: Measured, other: Measured): Measured => ({
  value: one.value - other.value,
  plusMinus: one.plusMinus + other.plusMinus,
});

/** True where the whole interval lies within from-to. */
export const surelyWithin = ({ value, plusMinus }: Measured, from: number, to: number): boolean =>
  value - plusMinus >= from - dust && value + plusMinus <= to + dust;

/** Steps in one printed unit: seconds and degrees are printed as they are, metres in centimetres. */
const printedPerUnit = { s: 1, m: 100, deg: 1, '%': 1 } as const;

/** The nearest step, as the number that is printed: seconds to 0.1, whole centimetres, tens of degrees, whole percent. */
export const printed = (value: number, unit: PrintedUnit): number => inPrint(Math.round(inSteps(value, unit)), unit);

const inPrint = (count: number, unit: PrintedUnit): number =>
  Math.round(count * steps[unit] * printedPerUnit[unit] * 10) / 10 + 0;

/** A measure as it is printed: "1.2 s ± 0.1 s"; the half-width is rounded up, and never reads as nothing. */
export const printedMeasure = ({ value, plusMinus }: Measured, unit: PrintedUnit) => ({
  value: printed(value, unit),
  within: inPrint(Math.max(1, Math.ceil(inSteps(plusMinus, unit) - dust)), unit),
});

/** The same of the rep that it is compared with. */
export function printedOther(other: Measured, unit: PrintedUnit) {
  const { value, within } = printedMeasure(other, unit);
  return { otherValue: value, otherWithin: within };
}
