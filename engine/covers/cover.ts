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

/** A cover's box at one frame. */
export const coverPlaceSchema = v.strictObject({ frame, box: boxSchema });
export type CoverPlace = v.InferOutput<typeof coverPlaceSchema>;

const entries = {
  /** First and last frame that it covers. */
  firstFrame: frame,
  lastFrame: frame,
  look: v.optional(coverLookSchema, 'filled'),
};

/** Its box at some frames, in order; between them it moves evenly, before the first and after the last it stays. */
const placesSchema = v.pipe(
  v.array(coverPlaceSchema),
  v.minLength(1),
  v.check((places) => places.every(({ frame: at }, index) => index === 0 || at > (places[index - 1]?.frame ?? at))),
);

/** Something made unrecognisable in everything that leaves the desk, such as a face. */
export const coverSchema = v.strictObject({ ...entries, places: placesSchema });
export type Cover = v.InferOutput<typeof coverSchema>;

/** What is covered in a clip: a box that somebody placed, or the lifter's head, wherever the joints put it. */
export const clipCoverSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('box'), ...entries, places: placesSchema }),
  v.strictObject({ kind: v.literal('head'), ...entries }),
]);
export type ClipCover = v.InferOutput<typeof clipCoverSchema>;

/** Covers that a clip can have, and places that one can have. */
export const mostCovers = 20;
export const mostCoverPlaces = 2000;

/** Where a cover is at a frame; null outside of its frames. */
export function boxAt({ firstFrame, lastFrame, places }: Cover, frame: number): Box | null {
  if (frame < firstFrame || frame > lastFrame) return null;
  const next = placesBefore(places, frame);
  const [before, after] = [places[next - 1], places[next]];
  if (before === undefined || after === undefined) return (before ?? after)?.box ?? null;
  const share = (frame - before.frame) / (after.frame - before.frame);
  const between = (key: keyof Box) => before.box[key] + share * (after.box[key] - before.box[key]);
  return {
    leftPx: between('leftPx'),
    topPx: between('topPx'),
    widthPx: between('widthPx'),
    heightPx: between('heightPx'),
  };
}

/** How many of rising places lie at a frame or before it: a head's cover has one in every frame of a long clip. */
function placesBefore(places: readonly CoverPlace[], frame: number): number {
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((places[middle]?.frame ?? frame) <= frame) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Rising places with one more; it takes the place of an earlier one at its frame. */
export function withPlace(places: readonly CoverPlace[], place: CoverPlace): CoverPlace[] {
  return [...withoutPlace(places, place.frame), place].sort((one, other) => one.frame - other.frame);
}

/** The places without the one at a frame. */
export const withoutPlace = (places: readonly CoverPlace[], frame: number): CoverPlace[] =>
  places.filter((place) => place.frame !== frame);

/** Whether any of a box lies within a picture. */
export const meetsPicture = (
  { leftPx, topPx, widthPx, heightPx }: Box,
  { width, height }: { readonly width: number; readonly height: number },
): boolean => leftPx < width && topPx < height && leftPx + widthPx > 0 && topPx + heightPx > 0;
