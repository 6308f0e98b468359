import * as v from 'valibot';
import type { TimeBase } from './frameTable.ts';

/** A frame of a clip's table with its time. */
export const exactMomentSchema = v.strictObject({
  frame: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000)),
  ticks: v.pipe(v.number(), v.safeInteger()),
});
export type ExactMoment = v.InferOutput<typeof exactMomentSchema>;

/** A moment of a clip: a frame of its table (exact), or media seconds where no table is known. */
export const momentSchema = v.union([
  exactMomentSchema,
  v.strictObject({ seconds: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(86_400)) }),
]);
export type Moment = v.InferOutput<typeof momentSchema>;

/** A moment as media microseconds, rounded half up; null for a frame of a clip whose time base isn't known. */
export function momentUs(moment: Moment, timeBase: TimeBase | undefined): number | null {
  if ('seconds' in moment) return Math.round(moment.seconds * 1e6);
  return timeBase === undefined ? null : ticksToUs(moment.ticks, timeBase);
}

/** Division of whole numbers, rounded half up (towards plus infinity); `divisor` is positive. */
export function divideHalfUp(dividend: bigint, divisor: bigint): bigint {
  const doubled = 2n * dividend + divisor;
  const twice = 2n * divisor;
  const quotient = doubled / twice;
  return doubled % twice < 0n ? quotient - 1n : quotient;
}

/** Ticks of a time base as media microseconds, rounded half up; exact for any safe tick value. */
export function ticksToUs(ticks: number, timeBase: TimeBase): number {
  const dividend = BigInt(ticks) * BigInt(timeBase.numerator) * 1_000_000n;
  return Number(divideHalfUp(dividend, BigInt(timeBase.denominator)));
}

/**
 * Media time as lifting time: what the lifter lived through. `realTimeFactor` = capture rate / playback rate, 8
 * for 240 frames per second stored as 30. Microseconds, rounded half up.
 */
export function mediaToLiftingUs(mediaUs: number, realTimeFactor: number): number {
  return Math.round(mediaUs / realTimeFactor);
}
