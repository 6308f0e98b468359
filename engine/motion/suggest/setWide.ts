import type { Measured, RepMeasurement } from '../measurement.ts';
import { difference, type PrintedUnit, surelyAbove } from './certain.ts';

/** A rep with one of its measures. */
export type RepValue = { readonly rep: RepMeasurement; readonly measured: Measured };

/** A rep that falls short of another by more than the reps of a set may differ. */
export type Lesser = RepValue & { readonly than: RepValue; readonly gap: Measured; readonly missedBy: number };

/** Reps in which a measure was had, in their order. */
export const valuesOf = (
  reps: readonly RepMeasurement[],
  measureOf: (rep: RepMeasurement) => Measured | null | undefined,
): RepValue[] =>
  reps.flatMap((rep) => {
    const measured = measureOf(rep);
    return measured ? [{ rep, measured }] : [];
  });

type Bounds = {
  /** How much less than the other's value passes. */
  readonly limitOf: (value: number) => number;
  readonly unit: PrintedUnit;
  /** Values above it count as it: a rep may fall from more than is asked to what is asked. */
  readonly cap?: number;
};

function lesserThan(than: RepValue, others: readonly RepValue[], { limitOf, unit, cap = Infinity }: Bounds): Lesser[] {
  const capped = ({ value, plusMinus }: Measured): Measured => ({ value: Math.min(value, cap), plusMinus });
  const from = capped(than.measured);
  return others
    .map((other) => ({
      ...other,
      than,
      gap: difference(than.measured, other.measured),
      missedBy: surelyAbove(difference(from, capped(other.measured)), limitOf(from.value), unit),
    }))
    .filter(({ missedBy }) => missedBy > 0);
}

/** Reps that fall short of the first; none unless the last one does. Under three reps nothing fades. */
export function fading(values: readonly RepValue[], bounds: Bounds): Lesser[] {
  const [first, ...others] = values;
  if (first === undefined || others.length < 2) return [];
  const lesser = lesserThan(first, others, bounds);
  return lesser.at(-1)?.rep === others.at(-1)?.rep ? lesser : [];
}

/** Reps that fall short of the one with most. */
export function varying(values: readonly RepValue[], bounds: Bounds): Lesser[] {
  const [first, ...others] = values;
  if (first === undefined) return [];
  const most = others.reduce((best, next) => (next.measured.value > best.measured.value ? next : best), first);
  return lesserThan(most, values, bounds);
}

/**
 * Reps that fall short of what two of the set reach, or of the other one of two: a single rep that goes further than all
 * others makes no rule for them.
 */
export function behindTwo(values: readonly RepValue[], bounds: Bounds): Lesser[] {
  const [most, second] = [...values].sort((one, other) => other.measured.value - one.measured.value);
  const than = values.length > 2 ? second : most;
  return than === undefined ? [] : lesserThan(than, values, bounds);
}
