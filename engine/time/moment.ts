import * as v from 'valibot';
import type { TimeBase } from './frameTable.ts';

/** A frame of a clip's table with its time. */
export const exactMomentSchema = v.strictObject({
  frame: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000)),
  ticks: v.pipe(v.number(), v.safeInteger()),
});
export type ExactMoment = v.InferOutput<typeof exactMomentSchema>;

/** A moment of a clip: a frame of its table (exact), or seconds since its first frame appears, where no table is known. */
export const momentSchema = v.union([
  exactMomentSchema,
  v.strictObject({
    seconds: v.pipe(
      v.number(),
      v.finite(),
      v.minValue(0),
      v.maxValue(86_400),
      v.description(
        'Seconds since the first frame of the clip’s footage appears: 0 is that frame, whatever time the file gives it. The moment is the frame that is on screen then.',
      ),
    ),
  }),
]);
export type Moment = v.InferOutput<typeof momentSchema>;

/** How a clip's footage counts its times, and when its first frame appears; at 0 where that is not said. */
export type FootageTimes = { readonly timeBase: TimeBase; readonly startUs?: number | undefined };

/** A moment as media microseconds, rounded half up; null for a frame of a clip whose times aren't known. */
export function momentUs(moment: Moment, times: FootageTimes | undefined): number | null {
  if ('seconds' in moment) return (times?.startUs ?? 0) + Math.round(moment.seconds * 1e6);
  return times === undefined ? null : ticksToUs(moment.ticks, times.timeBase);
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
