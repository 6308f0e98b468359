import type { Measured, RepMeasurement, SetSummary } from '../measurement.ts';

/** What the reps of a set have in common: how far speed fell, how even they were. */
export function summarise(reps: readonly RepMeasurement[]): SetSummary {
  return {
    speedLossPct: speedLossPct(reps.flatMap(({ meanConcentricMps }) => meanConcentricMps ?? [])),
    romSpreadM: deviation(reps.map(({ romM }) => romM?.value ?? null)),
    eccentricSpreadS: deviation(reps.map(({ durationsS }) => durationsS.eccentric?.value ?? null)),
  };
}

/** Sample standard deviation of what is known; null with fewer than two. */
function deviation(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  if (known.length < 2) return null;
  const mean = known.reduce((sum, value) => sum + value, 0) / known.length;
  return Math.sqrt(known.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (known.length - 1));
}

/**
 * Speed lost over a set in percent: 100 × (fastest rep − last rep) / fastest rep, of mean concentric speeds in order
 * (Sánchez-Medina & González-Badillo 2011). 0 when the last rep is the fastest; null for fewer than two reps or a speed
 * that is none. The half-width takes the two speeds to be wrong apart from each other.
 */
export function speedLossPct(speedsMps: readonly Measured[]): Measured | null {
  const last = speedsMps.at(-1);
  if (last === undefined || speedsMps.length < 2 || speedsMps.some(({ value }) => !(value > 0))) return null;
  const fastest = speedsMps.reduce((best, speed) => (speed.value > best.value ? speed : best));
  if (fastest === last) return { value: 0, plusMinus: (100 * Math.SQRT2 * last.plusMinus) / last.value };
  const share = last.value / fastest.value;
  const plusMinus = Math.hypot(last.plusMinus, share * fastest.plusMinus) / fastest.value;
  return { value: 100 * (1 - share), plusMinus: 100 * plusMinus };
}
