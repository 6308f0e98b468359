import type { Measured, RepMeasurement } from '../measurement.ts';

/** Fewer reps don't make a trend. */
const fewest = 3;

/** A share that falls over a set, of the first rep's, that is nothing to speak of (common practice, no source). */
const freeShare = 0.2;

/** How a measure falls over a set. */
export type Fall = {
  /** On the straight line through the reps, at the first and the last of them. */
  readonly first: number;
  readonly last: number;
  /** first − last. */
  readonly fall: Measured;
  /** How far the fall is beyond what is free. */
  readonly beyond: number;
  /** Reps that lie below the free share on the line, ascending; the last one is among them. */
  readonly reps: readonly RepMeasurement[];
};

/**
 * The fall of a measure over the reps, by a straight line through those that have it: certain where it passes a fifth of
 * the first (or `freeAtLeast`) by more than its uncertainty, which is the larger of the measures' own and twice the line's
 * standard error. Null otherwise, and for fewer than three reps.
 */
export function fallOver(
  reps: readonly RepMeasurement[],
  measureOf: (rep: RepMeasurement) => Measured | null,
  freeAtLeast = 0,
): Fall | null {
  const known = reps.flatMap((rep) => {
    const measured = measureOf(rep);
    return measured === null ? [] : [{ rep, x: rep.index, y: measured.value, plusMinus: measured.plusMinus }];
  });
  const [start, end] = [known[0], known.at(-1)];
  if (start === undefined || end === undefined || known.length < fewest) return null;
  const meanX = known.reduce((sum, { x }) => sum + x, 0) / known.length;
  const meanY = known.reduce((sum, { y }) => sum + y, 0) / known.length;
  const sxx = known.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  const slope = known.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / sxx;
  const on = (x: number) => meanY + slope * (x - meanX);
  const left = known.reduce((sum, { x, y }) => sum + (y - on(x)) ** 2, 0);
  const spanX = end.x - start.x;
  const ofMeasures = Math.sqrt(known.reduce((sum, { x, plusMinus }) => sum + ((x - meanX) * plusMinus) ** 2, 0)) / sxx;
  const ofLine = 2 * Math.sqrt(left / (known.length - 2) / sxx);
  const fall = { value: -slope * spanX, plusMinus: spanX * Math.max(ofMeasures, ofLine) };
  const first = on(start.x);
  const free = Math.max(freeAtLeast, freeShare * first);
  const beyond = fall.value - free;
  if (!(beyond > fall.plusMinus)) return null;
  return {
    first,
    last: on(end.x),
    fall,
    beyond,
    reps: known.filter(({ x }) => first - on(x) > free || x === end.x).map(({ rep }) => rep),
  };
}
