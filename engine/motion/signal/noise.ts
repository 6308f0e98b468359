import { knownRuns } from './evenGrid.ts';
import { lowPass, passCorrection } from './lowPass.ts';

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

/** Cut-offs that whole-body movement may be smoothed with, in Hz. */
export const cutOffRangeHz = { lowest: 3, highest: 10 } as const;

/** Mean square of what the filter takes away. */
function meanSquareRemoved(values: ArrayLike<number>, sampleHz: number, cutOffHz: number): number {
  const smooth = lowPass(values, { sampleHz, cutOffHz });
  return smooth.reduce((sum, value, i) => sum + ((values[i] ?? 0) - value) ** 2, 0) / Math.max(1, smooth.length);
}

/** Share of a white signal's power that is in what the filter removes, from its gain at even frequencies. */
function shareRemoved(sampleHz: number, cutOffHz: number): number {
  const steps = 200;
  const warpedCutOff = Math.tan((Math.PI * cutOffHz) / sampleHz);
  const removed = Array.from({ length: steps }, (_, i) => {
    const ratio = Math.tan((Math.PI * (i + 0.5)) / (2 * steps)) / warpedCutOff;
    const gain = 1 / (1 + passCorrection(2) ** 4 * ratio ** 4);
    return (1 - gain) ** 2;
  });
  return removed.reduce((sum, one) => sum + one, 0) / steps;
}

/** Straight line through points by least squares: where it meets x = 0. */
function interceptOf(points: readonly { readonly x: number; readonly y: number }[]): number {
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / points.length;
  const sxx = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  const sxy = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0);
  return sxx === 0 ? meanY : meanY - (sxy / sxx) * meanX;
}

/**
 * The cut-off at which what the filter takes away equals the noise, by residual analysis (Winter, Biomechanics and Motor
 * Control of Human Movement, 4th ed.), within 3-10 Hz and below half the sampling rate. The line is fitted to the
 * residual's square over the share of white noise that the filter lets through: straight for white noise, as the
 * residual over the cut-off in Hz is not. Where nothing passes, it gives the noise's variance.
 */
export function residualCutOffHz(values: ArrayLike<number>, setting: { readonly sampleHz: number }): number {
  const { sampleHz } = setting;
  const halfHz = sampleHz / 2;
  const highest = Math.min(cutOffRangeHz.highest, halfHz * 0.9);
  const lowest = Math.min(cutOffRangeHz.lowest, highest);
  const [tailFrom, tailTo] = [Math.min(10, halfHz * 0.5), Math.min(30, halfHz * 0.8)];
  const tail = Array.from({ length: 9 }, (_, i) => {
    const cutOffHz = tailFrom + ((tailTo - tailFrom) * i) / 8;
    return { x: 1 - shareRemoved(sampleHz, cutOffHz), y: meanSquareRemoved(values, sampleHz, cutOffHz) };
  });
  const noise = interceptOf(tail);
  let [low, high] = [lowest, highest];
  if (meanSquareRemoved(values, sampleHz, low) <= noise) return low;
  if (meanSquareRemoved(values, sampleHz, high) >= noise) return high;
  while (high - low > 0.05) {
    const middle = (low + high) / 2;
    if (meanSquareRemoved(values, sampleHz, middle) > noise) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
