import type { Curve } from './curve.ts';
import { indexAt } from './curve.ts';

/** Rises smaller than this, in metres, are no second try. */
const leastRiseM = 0.01;
/** The part of the range next to the stretched end in which the load may turn only once. */
const nearEndShare = 0.15;

/**
 * How often the load turned round at the stretched end: 1 = once, as it should; 2 = it came up, sank and came up again.
 * `towardStretched`: -1 when the stretched end is the lower one, 1 when it is the higher.
 */
export function countBounces(
  curve: Curve,
  span: {
    readonly fromS: number;
    readonly toS: number;
    readonly range: number;
    readonly towardStretched: 1 | -1;
    readonly noise: number;
  },
): number {
  const depths = heightsWithin(curve, span.fromS, span.toS).map((value) => value * span.towardStretched);
  const furthest = Math.max(...depths);
  const least = Math.max(leastRiseM, 3 * span.noise);
  let turns = 0;
  let peak = Number.NEGATIVE_INFINITY;
  let trough = Number.POSITIVE_INFINITY;
  let near = false;
  for (const depth of depths) {
    if (!near) {
      if (depth < furthest - nearEndShare * span.range) continue;
      near = true;
    }
    if (depth > peak) peak = depth;
    if (peak - depth >= least && trough === Number.POSITIVE_INFINITY) {
      turns += 1;
      trough = depth;
    }
    if (trough !== Number.POSITIVE_INFINITY) {
      trough = Math.min(trough, depth);
      const again = depth - trough >= least && depth >= furthest - nearEndShare * span.range;
      if (again) {
        peak = depth;
        trough = Number.POSITIVE_INFINITY;
      }
    }
  }
  return Math.max(1, turns);
}

/** The furthest that the load went against its direction between two moments; `sense` 1 = it goes upward. */
export function furthestBack(
  curve: Curve,
  { fromS, toS, sense }: { readonly fromS: number; readonly toS: number; readonly sense: 1 | -1 },
): number {
  let furthest = Number.NEGATIVE_INFINITY;
  let back = 0;
  for (const value of heightsWithin(curve, fromS, toS)) {
    furthest = Math.max(furthest, value * sense);
    back = Math.max(back, furthest - value * sense);
  }
  return back;
}

function heightsWithin(curve: Curve, fromS: number, toS: number): number[] {
  return curve.values.slice(indexAt(curve, fromS), indexAt(curve, toS) + 1).filter((value) => value !== null);
}
