import * as v from 'valibot';
import { overrideSchema, repsSchema } from '../../engine/review/review.ts';
import { criterionIdSchema, weightSchema } from '../../engine/rubric/rubric.ts';
import { changed, frame, historyStateSchema, id, remark } from './shapes.ts';

const flagChange = v.strictObject({
  criterion: v.optional(criterionIdSchema),
  fault: v.optional(v.nullable(v.string())),
  weight: v.optional(weightSchema),
  reps: v.optional(repsSchema),
  frame: v.optional(frame),
  note: v.optional(remark),
  cue: v.optional(remark),
});

/** Requests that judge: reps, flags, ticks, grades by hand, and the version of the rubric. */
export const judgingRequests = {
  /**
   * Marks an edge at a frame. `start` begins a new rep; `longEnd` and `end` belong to the rep that started last
   * at or before the frame. Reps are numbered by start time; marking an edge again moves it.
   */
  'reps.mark': {
    params: v.strictObject({ clipId: id, edge: v.picklist(['start', 'longEnd', 'end']), frame }),
    result: v.strictObject({ rep: v.number(), history: historyStateSchema }),
  },
  'reps.remove': { params: v.strictObject({ clipId: id, rep: v.number() }), result: changed },
  'flags.add': {
    params: v.strictObject({
      clipId: id,
      criterion: criterionIdSchema,
      fault: v.optional(v.nullable(v.string()), null),
      weight: weightSchema,
      reps: repsSchema,
      frame,
      note: v.optional(remark, ''),
      cue: v.optional(remark, ''),
    }),
    result: v.strictObject({ flagId: id, history: historyStateSchema }),
  },
  'flags.update': { params: v.strictObject({ flagId: id, change: flagChange }), result: changed },
  'flags.remove': { params: v.strictObject({ flagId: id }), result: changed },
  /** Ticks a criterion as looked at and fine for reps of a clip, or takes the tick back. */
  'ticks.set': {
    params: v.strictObject({ clipId: id, criterion: criterionIdSchema, reps: repsSchema, fine: v.boolean() }),
    result: changed,
  },
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
