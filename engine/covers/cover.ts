import * as v from 'valibot';

const px = v.pipe(v.number(), v.finite(), v.minValue(-100_000), v.maxValue(100_000));
const side = v.pipe(px, v.minValue(1));
const frame = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000));

/** A box in pixels of the upright picture. */
export const boxSchema = v.strictObject({ leftPx: px, topPx: px, widthPx: side, heightPx: side });
export type Box = v.InferOutput<typeof boxSchema>;

/** `filled`: one dark box, which nobody can undo. `mosaic`: a few large squares. */
export const coverLooks = ['filled', 'mosaic'] as const;
export const coverLookSchema = v.picklist(coverLooks);
export type CoverLook = (typeof coverLooks)[number];

/** Where a cover is at a frame. */
export const coverPlaceSchema = v.strictObject({ frame, box: boxSchema });
export type CoverPlace = v.InferOutput<typeof coverPlaceSchema>;

const entries = {
  /** First and last frame that it covers. */
  firstFrame: frame,
  lastFrame: frame,
  look: v.optional(coverLookSchema, 'filled'),
};

/** Where it is at some frames, rising; between them it moves evenly, before and after them it stays. */
const placesSchema = v.pipe(
  v.array(coverPlaceSchema),
  v.minLength(1),
  v.check((places) => places.every(({ frame: at }, index) => index === 0 || at > (places[index - 1]?.frame ?? at))),
);

/** Something that is made unrecognisable in everything that leaves the desk: somebody's face, say. */
export const coverSchema = v.strictObject({ ...entries, places: placesSchema });
export type Cover = v.InferOutput<typeof coverSchema>;

/** What is covered in a clip: a box that somebody placed, or the lifter's head, wherever the joints have it. */
export const clipCoverSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('box'), ...entries, places: placesSchema }),
  v.strictObject({ kind: v.literal('head'), ...entries }),
]);
export type ClipCover = v.InferOutput<typeof clipCoverSchema>;

/** Covers that a clip can have, and places that one can have. */
export const mostCovers = 20;
export const mostCoverPlaces = 2000;
