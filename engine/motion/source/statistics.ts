import { median } from '../signal/quantile.ts';

/** Standard deviation of numbers about their mean. */
export function deviationOf(numbers: readonly number[]): number {
  const mean = numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
  return Math.sqrt(numbers.reduce((sum, number) => sum + (number - mean) ** 2, 0) / numbers.length);
}

/** Pearson's correlation of pairs; 0 where either stands still. */
export function correlationOf(pairs: readonly (readonly [number, number])[]): number {
  const count = pairs.length;
  const meanX = pairs.reduce((sum, [x]) => sum + x, 0) / count;
  const meanY = pairs.reduce((sum, [, y]) => sum + y, 0) / count;
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of pairs) {
    xx += (x - meanX) ** 2;
    xy += (x - meanX) * (y - meanY);
    yy += (y - meanY) ** 2;
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
}

/** Samples this close together in time tell the noise between them, and not the movement. */
const closeS = 0.45;

/**
 * Standard deviation of the noise on values at uneven moments, from how far each lies off the line between its neighbours:
 * for white noise at even steps that is √1.5 times as large. Movement counts for little as long as samples lie close.
 */
export function noiseAbout(values: readonly (number | null)[], timesS: readonly number[]): number {
  const known = values.flatMap((value, index) => (value === null ? [] : [{ value, atS: timesS[index] ?? 0 }]));
  const off = known.flatMap((here, index) => {
    const [before, after] = [known[index - 1], known[index + 1]];
    if (before === undefined || after === undefined || after.atS - before.atS > closeS) return [];
    const share = (here.atS - before.atS) / (after.atS - before.atS);
    return [Math.abs(here.value - before.value - share * (after.value - before.value))];
  });
  return off.length === 0 ? 0 : (1.4826 * median(off)) / Math.sqrt(1.5);
}
