import * as v from 'valibot';

const px = v.pipe(v.number(), v.finite());
const side = v.pipe(px, v.minValue(1));
const frame = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000));

/** A box in pixels of the upright picture. */
export const boxSchema = v.strictObject({ leftPx: px, topPx: px, widthPx: side, heightPx: side });
export type Box = v.InferOutput<typeof boxSchema>;

/** Something that is made unrecognisable in everything that leaves the desk: somebody's face, say. */
export const coverSchema = v.strictObject({
  /** First and last frame that it covers. */
  fromFrame: frame,
  toFrame: frame,
  /** `filled`: one dark box, which nobody can undo. `mosaic`: a few large squares. */
  look: v.optional(v.picklist(['filled', 'mosaic']), 'filled'),
  /** Where it is at some frames, rising; between them it moves evenly, before and after them it stays. */
  places: v.pipe(v.array(v.strictObject({ frame, box: boxSchema })), v.minLength(1)),
});
export type Cover = v.InferOutput<typeof coverSchema>;

/** Where a cover is at a frame; null outside of its frames. */
export function boxAt({ fromFrame, toFrame, places }: Cover, atFrame: number): Box | null {
  if (atFrame < fromFrame || atFrame > toFrame) return null;
  const after = places.find((place) => place.frame >= atFrame);
  const before = places.findLast((place) => place.frame <= atFrame);
  if (before === undefined || after === undefined || before.frame === after.frame) {
    return (before ?? after)?.box ?? null;
  }
  const share = (atFrame - before.frame) / (after.frame - before.frame);
  const between = (key: keyof Box) => before.box[key] + share * (after.box[key] - before.box[key]);
  return {
    leftPx: between('leftPx'),
    topPx: between('topPx'),
    widthPx: between('widthPx'),
    heightPx: between('heightPx'),
  };
}
