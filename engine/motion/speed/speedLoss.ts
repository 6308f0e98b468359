import type { Measured } from '../measurement.ts';

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
