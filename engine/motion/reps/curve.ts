import { knownRuns, onEvenGrid, overRuns } from '../signal/evenGrid.ts';
import { lowPass } from '../signal/lowPass.ts';

/**
 * A coordinate over lifting time on an even grid, smoothed, with its speed. Where nothing was seen for long there are
 * several stretches; nothing is laid across a gap.
 */
export type Curve = {
  readonly startS: number;
  readonly stepS: number;
  readonly values: readonly (number | null)[];
  readonly speeds: readonly (number | null)[];
  /** How far its values wander off the load although they are smooth (one standard deviation), in their unit. */
  readonly wander?: number;
};

export type SmoothingOptions = {
  readonly stepS: number;
  readonly cutOffHz: number;
  readonly longestGapS: number;
  /** See `Curve`. */
  readonly wander?: number;
};

/** Shorter stretches have no speed worth telling. */
const leastSamples = 5;

/** Lays samples on an even grid, smooths each unbroken stretch without shifting it, and takes its speed. */
export function smoothCurve(
  timesS: readonly number[],
  seen: readonly (number | null)[],
  { stepS, cutOffHz, longestGapS, wander = 0 }: SmoothingOptions,
): Curve {
  const grid = onEvenGrid(timesS, seen, { stepS, longestGapS });
  const long = { ...grid, values: withoutShortRuns(grid.values) };
  const smooth = overRuns(long, (values) => lowPass(values, { sampleHz: 1 / stepS, cutOffHz }));
  return {
    startS: grid.startS,
    stepS,
    values: smooth.values,
    wander,
    speeds: overRuns(smooth, (run) => speedsOf(run, stepS)).values,
  };
}

function withoutShortRuns(values: readonly (number | null)[]): (number | null)[] {
  const kept: (number | null)[] = values.map(() => null);
  for (const run of knownRuns(values)) {
    if (run.values.length < leastSamples) continue;
    run.values.forEach((value, index) => {
      kept[run.from + index] = value;
    });
  }
  return kept;
}

/** Speeds of places on an even grid: central differences, one-sided at the ends. */
export function speedsOf(values: readonly number[], stepS: number): number[] {
  return values.map((value, index) => {
    const before = values[index - 1];
    const after = values[index + 1];
    const steps = (before === undefined ? 0 : 1) + (after === undefined ? 0 : 1);
    return steps === 0 ? 0 : ((after ?? value) - (before ?? value)) / (steps * stepS);
  });
}

/** The curve's value at a moment, between samples evenly; null where nothing was seen. */
export function valueAt(
  { startS, stepS, values }: Pick<Curve, 'startS' | 'stepS' | 'values'>,
  atS: number,
): number | null {
  const place = Math.min(values.length - 1, Math.max(0, (atS - startS) / stepS));
  const index = Math.floor(place);
  const before = values[index] ?? null;
  const after = values[index + 1] ?? before;
  if (before === null || after === null) return null;
  return before + (after - before) * (place - index);
}

/** The moment of a sample. */
export const timeOf = ({ startS, stepS }: Pick<Curve, 'startS' | 'stepS'>, index: number): number =>
  startS + index * stepS;

/** The sample nearest a moment, within the curve. */
export const indexAt = ({ startS, stepS, values }: Curve, atS: number): number =>
  Math.min(values.length - 1, Math.max(0, Math.round((atS - startS) / stepS)));
