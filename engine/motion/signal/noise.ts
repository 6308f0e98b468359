import { knownRuns } from './evenGrid.ts';

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? 0)) / 2;
};

/** Standard deviation of normal values / their median size. */
const deviationOfMedian = 1.482602;

/** Second differences of second differences: 1, −4, 6, −4, 1; white noise comes out √70 times as large. */
const fourthDifferences = (values: readonly number[]): number[] =>
  Array.from({ length: Math.max(0, values.length - 4) }, (_, i) => {
    const at = (k: number) => values[i + k] ?? 0;
    return at(0) - 4 * at(1) + 6 * at(2) - 4 * at(3) + at(4);
  });

/**
 * Standard deviation of the white noise on evenly spaced values, in their unit, from the median size of their second
 * differences taken twice: slow movement drops out, and a few jumps don't count. Null for fewer than ten in a row.
 */
export function noiseSd(values: readonly (number | null)[]): number | null {
  const differences = knownRuns(values).flatMap((run) => fourthDifferences(run.values));
  if (differences.length < 6) return null;
  return (deviationOfMedian * median(differences.map(Math.abs))) / Math.sqrt(70);
}
