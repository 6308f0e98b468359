import * as v from 'valibot';

/** Quarter turns that a coach can give a picture, in degrees clockwise. */
export const turns = [0, 90, 180, 270] as const;
export type TurnDeg = (typeof turns)[number];

const px = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(100_000));
/** The shortest side that can be shown, in pixels. */
export const leastSidePx = 16;
const side = v.pipe(px, v.minValue(leastSidePx));

/** The part of the upright picture that is shown, in its pixels, before it is mirrored. */
export const cropSchema = v.strictObject({ leftPx: px, topPx: px, widthPx: side, heightPx: side });
export type Crop = v.InferOutput<typeof cropSchema>;

/** The least and the most light that a picture can be given: a quarter, and four times as much. */
export const brightnessLimits = { least: 0.25, most: 4 } as const;

/** Light of each pixel, times this; 1 = as filmed. */
export const brightnessSchema = v.pipe(
  v.number(),
  v.finite(),
  v.minValue(brightnessLimits.least),
  v.maxValue(brightnessLimits.most),
);

/**
 * How the picture of a clip is shown, here and in everything that leaves; the footage stays as it is. `turnDeg` makes the upright
 * picture, together with what the file says: places are told in its pixels. The rest changes no place: it says what is seen of it.
 */
export const framingSchema = v.strictObject({
  turnDeg: v.optional(v.picklist(turns), 0),
  mirrored: v.optional(v.boolean(), false),
  crop: v.optional(v.nullable(cropSchema), null),
  brightness: v.optional(brightnessSchema, 1),
});
export type Framing = v.InferOutput<typeof framingSchema>;

/** The picture as the file shows it. */
export const asFilmed: Framing = { turnDeg: 0, mirrored: false, crop: null, brightness: 1 };

/** Whether the picture is shown as the file shows it. */
export const isAsFilmed = ({ turnDeg, mirrored, crop, brightness }: Framing): boolean =>
  turnDeg === 0 && !mirrored && crop === null && brightness === 1;

/** One turn after another. */
export function turnedBy(turnDeg: TurnDeg, by: TurnDeg): TurnDeg {
  return turns[((turnDeg + by) / 90) % 4] ?? 0;
}
