import { type EdgedRep, withManualEdges } from '../reps/manualEdges.ts';
import { repsOfCurve } from '../reps/phases.ts';
import type { Scale } from './calibrate.ts';
import type { SetToMeasure } from './setToMeasure.ts';
import type { Path } from './tracked.ts';

/** What a rep must cover at least: anything shorter is a step, sway or noise. */
const leastRangeM = 0.06;
const leastNoises = 8;
/** The same without a scale, as a share of the lifter's standing height. */
const leastShareOfBody = 0.035;

/** The reps of a set's path, with the edges that a person set. */
export function repsOf(
  path: Path,
  { exercise, edges, realTimeFactor }: SetToMeasure,
  { scale, bodyHeightPx }: { readonly scale: Scale | null; readonly bodyHeightPx: number | null },
): EdgedRep[] {
  const least = scale ? Math.max(leastRangeM, leastNoises * path.noise) : leastRangePx(path, bodyHeightPx);
  const measured = repsOfCurve(path.up, exercise, least);
  const lifting = edges.map(({ startS, longEndS, endS }) => ({
    ...(startS !== undefined && { startS: startS / realTimeFactor }),
    ...(longEndS !== undefined && { longEndS: longEndS / realTimeFactor }),
    ...(endS !== undefined && { endS: endS / realTimeFactor }),
  }));
  return withManualEdges(measured, lifting, { curve: path.up, exercise });
}

/** Without a scale: a good part of the whole range, well above the noise and more than the body sways. */
function leastRangePx({ up, noise }: Path, bodyHeightPx: number | null): number {
  const values = up.values.filter((value) => value !== null);
  const range = Math.max(...values) - Math.min(...values);
  return Math.max(0.25 * range, 12 * noise, leastShareOfBody * (bodyHeightPx ?? 0), 6);
}
