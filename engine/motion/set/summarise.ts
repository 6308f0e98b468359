import type { RepMeasurement, SetSummary } from '../measurement.ts';
import { speedLossPct } from '../speed/speedLoss.ts';

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
