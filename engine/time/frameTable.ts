import * as v from 'valibot';

/** Seconds per tick, as the container states it (for example 1/15360). */
export const timeBaseSchema = v.strictObject({
  numerator: v.pipe(v.number(), v.integer(), v.minValue(1)),
  denominator: v.pipe(v.number(), v.integer(), v.minValue(1)),
});
export type TimeBase = v.InferOutput<typeof timeBaseSchema>;

/**
 * The times of a clip's frames in display order: `ticks[i]` is when frame `i` appears, strictly rising;
 * `endTicks` is when the last frame goes. Every seek, flag and measure goes through this table, never
 * through a frame number times a frame duration.
 */
export const frameTableSchema = v.strictObject({
  timeBase: timeBaseSchema,
  ticks: v.array(v.pipe(v.number(), v.safeInteger())),
  endTicks: v.pipe(v.number(), v.safeInteger()),
});
export type FrameTable = v.InferOutput<typeof frameTableSchema>;
