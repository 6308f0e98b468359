import { lowPass } from '../signal/lowPass.ts';
import { type Curve, speedsOf, timeOf } from './curve.ts';

/** A move without its times: the samples of its turning points, how far it goes and its top speed. */
export type UntimedMove = {
  readonly fromIndex: number;
  readonly toIndex: number;
  readonly sense: 1 | -1;
  readonly range: number;
  readonly peakSpeed: number;
};

/** A movement's ends are looked for from where it has covered this share of its range. */
const underWayShare = 0.08;
/** A move starts with a hump of speed: the first one this high beside the highest; it is over once speed has sunk so far. */
const hump = { leastOfPeak: 0.3, overAt: 0.7 } as const;
/** An end is read from where the hump's speed sinks to these shares of its top. */
const shares = { early: 0.8, middle: 0.4, late: 0.1 } as const;

/** Peak speed of a minimum-jerk movement by its mean speed (Flash & Hogan 1985). */
const minimumJerkPeak = 1.875;
/** So many cycles in the time that a minimum-jerk movement of the same range and peak takes hold all of a movement's speed. */
const cyclesOfMovement = 7;

/** Share of its duration at which a movement reaches a share of its peak speed: the smoothest there is, … */
const minimumJerkAt = (share: number): number => (1 - Math.sqrt(1 - Math.sqrt(share))) / 2;
/** … and one that sets out with its full acceleration, of raised-cosine height. */
const raisedCosineAt = (share: number): number => Math.asin(share) / Math.PI;

/** Which shape an end has, by its later times; and how far it lies beyond the last one, both in times between the first two. */
const shapeOf = (at: (share: number) => number) => {
  const step = at(shares.middle) - at(shares.late);
  return { ratio: (at(shares.early) - at(shares.middle)) / step, beyond: at(shares.late) / step };
};
const soft = shapeOf(minimumJerkAt);
const sharp = shapeOf(raisedCosineAt);
/** So far from the soft shape towards the sharp one a ratio may be by noise alone. */
const noSharpness = 0.2;

/**
 * When a move starts and when it comes to rest, in seconds. Its speed is smoothed as far as its own pace allows, so that
 * the ends of a slow move don't drown in noise. Near rest, speed grows with a power of time that differs from lift to lift:
 * it is read from three crossings, between that of minimum jerk and that of a raised cosine, and extends the move to rest.
 */
export function endsOf(curve: Curve, move: UntimedMove): { readonly startS: number; readonly endS: number } {
  const { fromIndex, toIndex, sense, range, peakSpeed } = move;
  const paceS = (minimumJerkPeak * range) / peakSpeed;
  const heights = curve.values.slice(fromIndex, toIndex + 1).map((value) => value ?? 0);
  const calm = lowPass(heights, { sampleHz: 1 / curve.stepS, cutOffHz: cyclesOfMovement / paceS });
  const speeds = speedsOf(calm, curve.stepS).map((speed) => speed * sense);
  const covered = heights.map((height) => (height - (heights[0] ?? height)) * sense);
  const first = covered.findIndex((height) => height >= underWayShare * range);
  const last = covered.findLastIndex((height) => height <= (1 - underWayShare) * range);
  const backwards = speeds.toReversed();
  const fromStart = restBefore(speeds, first);
  const fromEnd = restBefore(backwards, speeds.length - 1 - last);
  return {
    startS: timeOf(curve, fromIndex + fromStart),
    endS: timeOf(curve, toIndex - fromEnd),
  };
}

/** Where a move comes out of rest, in samples from the first, looked for backwards from where it is under way. */
function restBefore(speeds: readonly number[], underWay: number): number {
  const top = humpFrom(speeds, Math.max(0, underWay));
  const limit = speeds[top] ?? 0;
  const late = crossing(speeds, top, shares.late * limit);
  // A move that was cut off while fast has no rest to be extended to.
  if (late === null) return 0;
  const middle = crossing(speeds, top, shares.middle * limit) ?? late;
  const early = crossing(speeds, top, shares.early * limit) ?? middle;
  const step = middle - late;
  if (step <= 0) return late;
  const towards = ((early - middle) / step - soft.ratio) / (sharp.ratio - soft.ratio);
  const sharpness = Math.min(1, Math.max(0, (towards - noSharpness) / (1 - noSharpness)));
  return late - step * (soft.beyond + (sharp.beyond - soft.beyond) * sharpness);
}

/** The top of the first hump of speed from a sample on. */
function humpFrom(speeds: readonly number[], from: number): number {
  const peak = Math.max(...speeds);
  let top = from;
  for (let index = from; index < speeds.length; index += 1) {
    const speed = speeds[index] ?? 0;
    const highest = speeds[top] ?? 0;
    if (speed > highest) top = index;
    else if (highest > hump.leastOfPeak * peak && speed < hump.overAt * highest) break;
  }
  return top;
}

/** Where the speed sinks to a limit, walking back from a sample, between samples evenly; null when it doesn't. */
function crossing(speeds: readonly number[], from: number, limit: number): number | null {
  for (let index = from; index >= 0; index -= 1) {
    const here = speeds[index] ?? 0;
    if (here > limit) continue;
    const after = speeds[index + 1] ?? here;
    return after > here ? index + (limit - here) / (after - here) : index;
  }
  return null;
}
