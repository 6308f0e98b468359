import * as v from 'valibot';
import { overrideSchema, repsSchema } from '../../engine/review/review.ts';
import { criterionIdSchema } from '../../engine/rubric/rubric.ts';
import { changed, frame, id } from './shapes.ts';

/** Requests on how a session is judged as a whole. */
export const judgingRequests = {
  /** Sets the grade of an exercise entry by hand, or the session's own (`entryId` null); `override` null takes it back. */
  'grades.override': {
    params: v.strictObject({ sessionId: id, entryId: v.nullable(id), override: v.nullable(overrideSchema) }),
    result: changed,
  },
  /** Moves an edge of a rep that is marked; it can't go past the edges beside it. */
  'reps.moveEdge': {
    params: v.strictObject({
      clipId: id,
      rep: v.pipe(v.number(), v.integer(), v.minValue(1)),
      edge: v.picklist(['start', 'longEnd', 'end']),
      frame,
    }),
    result: changed,
  },
  /** Ticks several criteria of a clip as looked at and fine, in one act. */
  'ticks.setMany': {
    params: v.strictObject({
      clipId: id,
      ticks: v.pipe(
        v.array(v.strictObject({ criterion: criterionIdSchema, reps: repsSchema })),
        v.minLength(1),
        v.maxLength(200),
      ),
    }),
    result: changed,
  },
  /** Judges a session by another version of the rubric: flags go where their faults belong there. */
  'sessions.rejudge': {
    params: v.strictObject({ sessionId: id, version: v.pipe(v.number(), v.integer(), v.minValue(1)) }),
    result: changed,
  },
} as const;
