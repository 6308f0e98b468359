import * as v from 'valibot';
import type { TimeBase } from './frameTable.ts';
import { ticksToUs } from './microseconds.ts';

/** A moment of a clip: a frame of its table (exact), or media seconds where no table is known. */
export const momentSchema = v.union([
  v.strictObject({
    frame: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000)),
    ticks: v.pipe(v.number(), v.safeInteger()),
  }),
  v.strictObject({ seconds: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(86_400)) }),
]);
export type Moment = v.InferOutput<typeof momentSchema>;

/** A moment as media microseconds, rounded half up; null for a frame of a clip whose time base isn't known. */
export function momentUs(moment: Moment, timeBase: TimeBase | undefined): number | null {
  if ('seconds' in moment) return Math.round(moment.seconds * 1e6);
  return timeBase === undefined ? null : ticksToUs(moment.ticks, timeBase);
}
