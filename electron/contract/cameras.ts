import * as v from 'valibot';
import { act } from './kinds.ts';
import { frame, id, none } from './shapes.ts';

/** Requests on clips that show one set from two sides. */
export const cameraRequests = {
  /**
   * Lays a clip beside another of its entry that shows the same set: by their sound, else by the turning points of their reps, or by two
   * frames of the same moment that a person chose. From then on both have the reps of the one that leads, and what was judged on either counts
   * for the one set. `conflict` where neither sound nor reps tell.
   */
  'cameras.pair': act({
    params: v.strictObject({
      leadId: id,
      clipId: id,
      by: v.optional(
        v.variant('how', [
          v.strictObject({ how: v.picklist(['any', 'sound', 'reps']) }),
          v.strictObject({ how: v.literal('frames'), leadFrame: frame, frame }),
        ]),
        { how: 'any' },
      ),
    }),
    result: v.strictObject({ by: v.picklist(['sound', 'reps', 'frames']) }),
  }),
  /** Takes a clip out of the set it shared; it keeps its reps, and what was judged on it. */
  'cameras.part': act({ params: v.strictObject({ clipId: id }), result: none }),
} as const;
