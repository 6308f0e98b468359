import * as v from 'valibot';

/** A moment of a clip: a frame of its table (exact), or media seconds where no table is known. */
export const momentSchema = v.union([
  v.strictObject({
    frame: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000)),
    ticks: v.pipe(v.number(), v.safeInteger()),
  }),
  v.strictObject({ seconds: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(86_400)) }),
]);
export type Moment = v.InferOutput<typeof momentSchema>;
