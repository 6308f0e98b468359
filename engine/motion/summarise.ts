import type { Measured, RepMeasurement, SetSummary } from './measurement.ts';

/** What the reps of a set have in common: how far speed fell, how even they were. */
export function summarise(reps: readonly RepMeasurement[]): SetSummary {
  return {
    speedLossPct: speedLoss(reps),
    romSpreadM: deviation(reps.map(({ romM }) => romM?.value ?? null)),
    eccentricSpreadS: deviation(reps.map(({ durationsS }) => durationsS.eccentric?.value ?? null)),
  };
}

/** 100 × (fastest rep − last rep) / fastest rep of mean concentric speed (Sánchez-Medina & González-Badillo 2011). */
function speedLoss(reps: readonly RepMeasurement[]): Measured | null {
  const speeds = reps.flatMap(({ meanConcentricMps }) => meanConcentricMps ?? []);
  const last = speeds.at(-1);
  if (!last || speeds.length < 2) return null;
  const fastest = speeds.reduce((most, speed) => (speed.value > most.value ? speed : most));
  const ratio = last.value / fastest.value;
  const off = last === fastest ? 0 : ratio * Math.hypot(last.plusMinus / last.value, fastest.plusMinus / fastest.value);
  return { value: 100 * (1 - ratio), plusMinus: 100 * off };
}

/** Sample standard deviation of what is known; null with fewer than two. */
function deviation(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  if (known.length < 2) return null;
  const mean = known.reduce((sum, value) => sum + value, 0) / known.length;
  return Math.sqrt(known.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (known.length - 1));
}
