import { type Curve, timeOf } from './curve.ts';
import type { UntimedMove } from './moveEnds.ts';

/** A move's end is read from where it has covered these shares of its way; the first rises with how far the curve wanders, up to a limit. */
const firstShare = { least: 0.06, most: 0.15, wanders: 3 } as const;
const secondFurther = 0.22;
/** The rest beside a move is looked at over so long, and is what keeps within so much of the way of its outermost place. */
const restS = 0.4;
const restWithin = 0.1;
const leastRestSamples = 4;
/** Lifts set out nearly as sharply as they can, and what they do before that can't be seen. */
const sharpness = 0.65;

/**
 * When a move whose place wanders starts and comes to rest, in seconds: from the heights, where the speeds near rest drown
 * in that. Both ends are read from two crossings of levels between the rests, and extended as far as a movement
 * does that lies between the smoothest there is and one that sets out with its full acceleration.
 */
export function endsByHeight(
  curve: Curve,
  move: UntimedMove,
  wander: number,
): { readonly startS: number; readonly endS: number } {
  const heights = curve.values.slice(move.fromIndex, move.toIndex + 1).map((value) => (value ?? 0) * move.sense);
  const before = curve.values.slice(0, move.fromIndex).map((value) => (value === null ? null : value * move.sense));
  const after = curve.values.slice(move.toIndex + 1).map((value) => (value === null ? null : value * move.sense));
  const setting = { stepS: curve.stepS, share: firstShareOf(wander, move.range) };
  const start = restBefore(heights, before, setting);
  const end = restBefore(
    heights.map((height) => -height).toReversed(),
    after.map((height) => (height === null ? null : -height)).toReversed(),
    setting,
  );
  return { startS: timeOf(curve, move.fromIndex + start), endS: timeOf(curve, move.toIndex - end) };
}

const firstShareOf = (wander: number, range: number): number =>
  Math.min(firstShare.most, Math.max(firstShare.least, (firstShare.wanders * wander) / range));

/**
 * Where a rising stretch leaves the rest at its beginning, in samples from its first, negative for before it. `before`: what
 * comes ahead of it.
 */
function restBefore(
  heights: readonly number[],
  before: readonly (number | null)[],
  { stepS, share }: { readonly stepS: number; readonly share: number },
): number {
  const low = Math.min(...heights);
  const high = Math.max(...heights);
  const way = high - low;
  const leaves = lastBelow(heights, low + restWithin * way);
  const from = leaves - Math.round(restS / stepS);
  const rest: number[] = [];
  for (let index = leaves; index >= from; index -= 1) {
    const height = index >= 0 ? heights[index] : (before.at(index) ?? null);
    if (height === null || height === undefined || Math.abs(height - low) > restWithin * way) break;
    rest.push(height);
  }
  const level = rest.length < leastRestSamples ? low : middleOf(rest);
  const first = lastCrossing(heights, level + share * (high - level));
  const second = lastCrossing(heights, level + (share + secondFurther) * (high - level));
  return Math.max(from, first - beyond(share) * (second - first));
}

const middleOf = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

/** The last sample at or below a level before the stretch stays above it on its way to the top. */
function lastBelow(heights: readonly number[], level: number): number {
  const top = heights.indexOf(Math.max(...heights));
  for (let index = top; index >= 0; index -= 1) if ((heights[index] ?? level) <= level) return index;
  return 0;
}

/** The same between samples. */
function lastCrossing(heights: readonly number[], level: number): number {
  const below = lastBelow(heights, level);
  const [here, next] = [heights[below] ?? level, heights[below + 1] ?? level];
  return next > here ? below + Math.max(0, Math.min(1, (level - here) / (next - here))) : below;
}

/** How far the beginning lies before the first crossing, in times between the two. */
function beyond(share: number): number {
  const of = (at: (covered: number) => number) => at(share) / (at(share + secondFurther) - at(share));
  return (1 - sharpness) * of(minimumJerkAt) + sharpness * of(raisedCosineAt);
}

/** The share of its time after which a move has covered a share of its way: a raised cosine of speed … */
const raisedCosineAt = (covered: number): number => Math.acos(1 - 2 * covered) / Math.PI;

/** … and minimum jerk (Flash & Hogan 1985): 10 t³ − 15 t⁴ + 6 t⁵, solved by halving. */
function minimumJerkAt(covered: number): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < 40; step += 1) {
    const t = (low + high) / 2;
    if (10 * t ** 3 - 15 * t ** 4 + 6 * t ** 5 < covered) low = t;
    else high = t;
  }
  return low;
}
