import * as v from 'valibot';
import { boxSchema, clipCoverSchema, coverLookSchema, coverPlaceSchema } from '../../engine/covers/cover.ts';
import { act } from './kinds.ts';
import { frame, id, none } from './shapes.ts';

/** A cover of the library, with the clip that it is on. */
export const keptCoverSchema = v.strictObject({ coverId: id, clipId: id, cover: clipCoverSchema });
export type KeptCover = v.InferOutput<typeof keptCoverSchema>;

/** Requests on what is covered in a clip, in everything of it that leaves the desk. */
export const coverRequests = {
  /** Covers a box, or the lifter's head, over the whole clip. */
  'covers.add': act({
    params: v.strictObject({
      clipId: id,
      cover: v.variant('kind', [
        v.strictObject({ kind: v.literal('box'), place: coverPlaceSchema }),
        v.strictObject({ kind: v.literal('head') }),
      ]),
      look: v.optional(coverLookSchema, 'filled'),
    }),
    result: v.strictObject({ coverId: id }),
  }),
  /** Puts a box at a frame; it moves evenly from the place before and to the place after. */
  'covers.place': act({ params: v.strictObject({ coverId: id, frame, box: boxSchema }), result: none }),
  /** Changes its look, the first or the last frame that it covers. */
  'covers.update': act({
    params: v.strictObject({
      coverId: id,
      change: v.strictObject({
        look: v.optional(coverLookSchema),
        firstFrame: v.optional(frame),
        lastFrame: v.optional(frame),
      }),
    }),
    result: none,
  }),
  /** Forgets where a box is at a frame; its other places stay. */
  'covers.removePlace': act({ params: v.strictObject({ coverId: id, frame }), result: none }),
  'covers.remove': act({ params: v.strictObject({ coverId: id }), result: none }),
} as const;
