import { splineThrough } from './spline.ts';

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
