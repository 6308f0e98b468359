/** Second derivatives of the natural cubic spline at its knots, by the tridiagonal system (Thomas's algorithm). */
function bends(xs: readonly number[], ys: readonly number[]): number[] {
  const last = xs.length - 1;
  const gap = (i: number) => (xs[i + 1] ?? 0) - (xs[i] ?? 0);
  const slope = (i: number) => ((ys[i + 1] ?? 0) - (ys[i] ?? 0)) / gap(i);
  const above: number[] = [0];
  const right: number[] = [0];
  for (let i = 1; i < last; i += 1) {
    const pivot = 2 * (gap(i - 1) + gap(i)) - gap(i - 1) * (above[i - 1] ?? 0);
    above.push(gap(i) / pivot);
    right.push((6 * (slope(i) - slope(i - 1)) - gap(i - 1) * (right[i - 1] ?? 0)) / pivot);
  }
  const second = Array.from(xs, () => 0);
  for (let i = last - 1; i > 0; i -= 1) second[i] = (right[i] ?? 0) - (above[i] ?? 0) * (second[i + 1] ?? 0);
  return second;
}

/** Place of the last knot at or below `x`, the last but one at most. */
function intervalOf(xs: readonly number[], x: number): number {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((xs[middle] ?? 0) <= x) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * The natural cubic spline through points whose x rise strictly. Outside its knots it keeps the value of the nearest one;
 * a single point is a constant. Throws a `RangeError` for no points, or x that don't rise.
 */
export function splineThrough(xs: readonly number[], ys: readonly number[]): (x: number) => number {
  const [first, last] = [xs[0], xs.at(-1)];
  if (first === undefined || last === undefined || xs.length !== ys.length)
    throw new RangeError('a spline needs points');
  if (xs.some((x, i) => i > 0 && !(x > (xs[i - 1] ?? x)))) throw new RangeError('the x of a spline rise');
  const second = bends(xs, ys);
  return (asked) => {
    const x = Math.min(Math.max(asked, first), last);
    const i = intervalOf(xs, x);
    const [x0, x1, y0, y1] = [xs[i] ?? 0, xs[i + 1], ys[i] ?? 0, ys[i + 1]];
    if (x1 === undefined || y1 === undefined) return y0;
    const width = x1 - x0;
    const [a, b] = [(x1 - x) / width, (x - x0) / width];
    return a * y0 + b * y1 + (((a ** 3 - a) * (second[i] ?? 0) + (b ** 3 - b) * (second[i + 1] ?? 0)) * width ** 2) / 6;
  };
}

/** Values at even steps of time; null = nothing is known there. */
export type EvenGrid = {
  readonly startS: number;
  readonly stepS: number;
  readonly values: readonly (number | null)[];
};

type Known = { readonly timesS: number[]; readonly values: number[] };

/** The known samples in stretches that no gap longer than the longest one parts. */
function stretches(timesS: readonly number[], values: readonly (number | null)[], longestGapS: number): Known[] {
  const found: Known[] = [];
  for (const [i, timeS] of timesS.entries()) {
    const value = values[i] ?? null;
    if (value === null) continue;
    const current = found.at(-1);
    const lastS = current?.timesS.at(-1);
    if (current === undefined || lastS === undefined || timeS - lastS > longestGapS) {
      found.push({ timesS: [timeS], values: [value] });
    } else {
      current.timesS.push(timeS);
      current.values.push(value);
    }
  }
  return found;
}

/**
 * Samples at any rising times laid on an even grid from the first time to the last, by cubic splines through the known
 * ones. Gaps between known samples up to `longestGapS` are bridged; longer ones, and what lies before the first or after
 * the last known sample, stay null. Throws a `RangeError` for a step that is not above 0, or times that don't rise.
 */
export function onEvenGrid(
  timesS: readonly number[],
  values: readonly (number | null)[],
  setting: { readonly stepS: number; readonly longestGapS: number },
): EvenGrid {
  const { stepS, longestGapS } = setting;
  if (!(stepS > 0)) throw new RangeError('the step of a grid is above 0');
  const [startS, endS] = [timesS[0], timesS.at(-1)];
  if (startS === undefined || endS === undefined) return { startS: 0, stepS, values: [] };
  const slack = stepS * 1e-6;
  const grid: (number | null)[] = Array.from({ length: Math.floor((endS - startS + slack) / stepS) + 1 }, () => null);
  for (const stretch of stretches(timesS, values, longestGapS)) {
    const at = splineThrough(stretch.timesS, stretch.values);
    const from = Math.ceil(((stretch.timesS[0] ?? 0) - startS - slack) / stepS);
    const to = Math.floor(((stretch.timesS.at(-1) ?? 0) - startS + slack) / stepS);
    for (let i = from; i <= to; i += 1) grid[i] = at(startS + i * stepS);
  }
  return { startS, stepS, values: grid };
}

/** Stretches of a grid without nulls: where each begins, and its values. */
export function knownRuns(values: readonly (number | null)[]): { readonly from: number; readonly values: number[] }[] {
  const runs: { from: number; values: number[] }[] = [];
  for (const [i, value] of values.entries()) {
    if (value === null) continue;
    const run = runs.at(-1);
    if (run !== undefined && run.from + run.values.length === i) run.values.push(value);
    else runs.push({ from: i, values: [value] });
  }
  return runs;
}

/** A grid with each known stretch worked on by itself (a filter, a derivative); nulls stay where they are. */
export function overRuns(grid: EvenGrid, work: (values: readonly number[]) => readonly number[]): EvenGrid {
  const values: (number | null)[] = grid.values.map(() => null);
  for (const run of knownRuns(grid.values)) {
    for (const [i, value] of work(run.values).entries()) values[run.from + i] = value;
  }
  return { ...grid, values };
}
