import * as v from 'valibot';
import { overrideSchema, repsSchema } from '../../engine/review/review.ts';
import { criterionIdSchema, severitySchema } from '../../engine/rubric/rubric.ts';
import { act } from './kinds.ts';
import { frame, id, none, remark } from './shapes.ts';

const flagChange = v.strictObject({
  criterion: v.optional(criterionIdSchema),
  fault: v.optional(v.nullable(v.string())),
  severity: v.optional(v.nullable(severitySchema)),
  reps: v.optional(repsSchema),
  frame: v.optional(frame),
  note: v.optional(remark),
  cue: v.optional(remark),
});

/** Requests that judge: reps, flags, ticks and grades by hand. */
export const judgingRequests = {
  /**
   * Marks an edge at a frame. `start` begins a new rep; `stretchedEnd` and `end` belong to the rep that started last
   * at or before the frame. Reps are numbered by start time; marking an edge again moves it.
   */
  'reps.mark': act({
    params: v.strictObject({ clipId: id, edge: v.picklist(['start', 'stretchedEnd', 'end']), frame }),
    result: v.strictObject({ rep: v.number() }),
  }),
  'reps.remove': act({ params: v.strictObject({ clipId: id, rep: v.number() }), result: none }),
  'flags.add': act({
    params: v.strictObject({
      clipId: id,
      criterion: criterionIdSchema,
      fault: v.optional(v.nullable(v.string()), null),
      /** null = a plain note. */
      severity: v.nullable(severitySchema),
      reps: repsSchema,
      frame,
      note: v.optional(remark, ''),
      cue: v.optional(remark, ''),
    }),
    result: v.strictObject({ flagId: id }),
  }),
  'flags.update': act({ params: v.strictObject({ flagId: id, change: flagChange }), result: none }),
  /** Copies a flag to other places of its session: criterion, severity, words, and the fault where the exercise there has it. */
  'flags.copy': act({
    params: v.strictObject({
      flagId: id,
      to: v.pipe(v.array(v.strictObject({ clipId: id, reps: repsSchema, frame })), v.minLength(1), v.maxLength(500)),
    }),
    result: v.strictObject({ flagIds: v.array(id) }),
  }),
  'flags.remove': act({ params: v.strictObject({ flagId: id }), result: none }),
  /** Ticks a criterion as looked at and fine for reps of a clip, or takes the tick back. */
  'ticks.set': act({
    params: v.strictObject({ clipId: id, criterion: criterionIdSchema, reps: repsSchema, fine: v.boolean() }),
    result: none,
  }),
  /** Sets the grade of an exercise entry by hand, or the session's own (`entryId` null); `override` null takes it back. */
  'grades.override': act({
    params: v.strictObject({ sessionId: id, entryId: v.nullable(id), override: v.nullable(overrideSchema) }),
    result: none,
  }),
  /** Moves an edge of a rep that is marked; it can't go past the edges beside it. */
  'reps.moveEdge': act({
    params: v.strictObject({
      clipId: id,
      rep: v.pipe(v.number(), v.integer(), v.minValue(1)),
      edge: v.picklist(['start', 'stretchedEnd', 'end']),
      frame,
    }),
    result: none,
  }),
  /** Ticks several criteria of a clip as looked at and fine, in one act. */
  'ticks.setMany': act({
    params: v.strictObject({
      clipId: id,
      ticks: v.pipe(
        v.array(v.strictObject({ criterion: criterionIdSchema, reps: repsSchema })),
        v.minLength(1),
        v.maxLength(200),
      ),
    }),
    result: none,
  }),
} as const;
