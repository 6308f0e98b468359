import * as v from 'valibot';
import { drawnSchema } from '../../engine/review/drawings/drawing.ts';
import { changed, frame, historyStateSchema, id } from './shapes.ts';

/** Requests on what is drawn over the picture. */
export const drawingRequests = {
  /** Draws at a frame. It shows until `lastFrame`; without one, until the end of the frame's rep, or for one second. */
  'drawings.add': {
    params: v.strictObject({ clipId: id, drawn: drawnSchema, frame, lastFrame: v.optional(frame) }),
    result: v.strictObject({ drawingId: id, history: historyStateSchema }),
  },
  /** Changes a drawing: its shape whole, the first or the last frame at which it shows. */
  'drawings.update': {
    params: v.strictObject({
      drawingId: id,
      change: v.strictObject({
        drawn: v.optional(drawnSchema),
        firstFrame: v.optional(frame),
        lastFrame: v.optional(frame),
      }),
    }),
    result: changed,
  },
  'drawings.remove': { params: v.strictObject({ drawingId: id }), result: changed },
} as const;
