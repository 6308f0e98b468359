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

/** True when the times are those of a constant rate rounded to ticks: spacings differ by one tick at most. */
export function hasConstantRate(table: FrameTable): boolean {
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  for (const [index, tick] of table.ticks.entries()) {
    const before = table.ticks[index - 1];
    if (before === undefined) continue;
    const spacing = tick - before;
    least = Math.min(least, spacing);
    most = Math.max(most, spacing);
  }
  return most - least <= 1 || table.ticks.length < 3;
}

/** Frames per second over the whole clip, for display: frame changes by the time between the first and last frame. */
export function meanFrameRate(table: FrameTable): number {
  const first = table.ticks[0] ?? 0;
  const last = table.ticks.at(-1) ?? first;
  const changes = table.ticks.length - 1;
  const [count, spanTicks] = changes > 0 ? [changes, last - first] : [1, table.endTicks - first];
  return (count * table.timeBase.denominator) / (spanTicks * table.timeBase.numerator);
}
