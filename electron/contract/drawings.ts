import * as v from 'valibot';
import { drawnSchema } from '../../engine/review/drawings/drawing.ts';
import { act } from './kinds.ts';
import { frame, id, none } from './shapes.ts';

/** Requests on what is drawn over the picture. */
export const drawingRequests = {
  /** Draws at a frame. It shows until `lastFrame`; without one, until the end of the frame's rep, or for one second. */
  'drawings.add': act({
    params: v.strictObject({ clipId: id, drawn: drawnSchema, frame, lastFrame: v.optional(frame) }),
    result: v.strictObject({ drawingId: id }),
  }),
  /** Changes a drawing: its shape whole, the first or the last frame at which it shows. */
  'drawings.update': act({
    params: v.strictObject({
      drawingId: id,
      change: v.strictObject({
        drawn: v.optional(drawnSchema),
        firstFrame: v.optional(frame),
        lastFrame: v.optional(frame),
      }),
    }),
    result: none,
  }),
  'drawings.remove': act({ params: v.strictObject({ drawingId: id }), result: none }),
} as const;
