import * as v from 'valibot';
import type { SetMeasurement } from '../../engine/motion/measurement.ts';
import type { Suggestion } from '../../engine/motion/suggestion.ts';
import type { Recording } from '../../engine/recording/recording.ts';
import { clickSchema, setUpSchema } from '../../engine/recording/setUp.ts';
import { severitySchema } from '../../engine/rubric/rubric.ts';
import { act, read } from './kinds.ts';
import { engineType, id, none, remark } from './shapes.ts';

const suggestionId = v.pipe(v.string(), v.minLength(1), v.maxLength(200));

/** Requests that measure footage, and that answer what the measures propose. */
export const measuringRequests = {
  /** Puts clips in line to be recorded (disc, point, joints) and measured; those recorded already by the same method are done at once. */
  'measures.start': act({
    params: v.strictObject({
      clipIds: v.pipe(v.array(id), v.minLength(1), v.maxLength(500)),
      /** Joints take far longer than the disc. */
      joints: v.optional(v.boolean(), true),
      /** Records again although there is a recording. */
      again: v.optional(v.boolean(), false),
    }),
    result: v.strictObject({ jobIds: v.array(id) }),
  }),
  /** What is measured of a clip, with the reps' manual edges in place, and what it proposes. */
  'measures.get': read({
    params: v.strictObject({ clipId: id }),
    result: v.strictObject({
      setUp: setUpSchema,
      /** Null until the clip was recorded. */
      measurement: v.nullable(engineType<SetMeasurement>()),
      /** Changes whenever the recording does: then read it again. */
      recordedAt: v.nullable(v.string()),
      /** The job that waits or runs for this clip. */
      jobId: v.nullable(id),
      /** Those neither accepted nor dismissed. */
      suggestions: v.array(engineType<Suggestion>()),
      /** Those dismissed, to be brought back. */
      dismissed: v.array(engineType<Suggestion>()),
    }),
  }),
  /** The raw recording: disc, point and joints in pixels, for the layers over the picture. */
  'measures.recording': read({
    params: v.strictObject({ clipId: id }),
    result: v.strictObject({ recording: v.nullable(engineType<Recording>()) }),
  }),
  /** Changes what the coach says of the clip (facing, diameter, plumb, clicks for depth and back). An act. */
  'measures.setUp': act({
    params: v.strictObject({ clipId: id, change: v.partial(v.omit(setUpSchema, ['clicks'])) }),
    result: none,
  }),
  /** Says where the disc, the point or the lifter is at a frame, and follows it again from there, both ways. An act; the following is a job. */
  'measures.click': act({
    params: v.strictObject({ clipId: id, click: clickSchema }),
    result: v.strictObject({ jobId: id }),
  }),
  /** Forgets the clicks of one kind. An act; recording again is a job. */
  'measures.clearClicks': act({
    params: v.strictObject({ clipId: id, what: clickSchema.entries.what }),
    result: v.strictObject({ jobId: id }),
  }),
  /** Makes the measured reps the clip's reps and keeps every edge that a person set. */
  'measures.markReps': act({ params: v.strictObject({ clipId: id }), result: none }),
  /** Makes a movement that is offered a rep of the clip, by its index; its edges count as the coach's. */
  'measures.addOffered': act({
    params: v.strictObject({ clipId: id, offered: v.pipe(v.number(), v.integer()) }),
    result: none,
  }),
  /** Turns a suggestion into a flag, changed as the coach likes. One act. */
  'suggestions.accept': act({
    params: v.strictObject({
      clipId: id,
      suggestionId,
      change: v.optional(
        v.strictObject({
          severity: v.optional(severitySchema),
          reps: v.optional(v.array(v.pipe(v.number(), v.integer(), v.minValue(1)))),
          note: v.optional(remark),
        }),
        {},
      ),
    }),
    result: v.strictObject({ flagId: id }),
  }),
  /** Puts a suggestion aside for good, or brings it back. One act. */
  'suggestions.dismiss': act({
    params: v.strictObject({ clipId: id, suggestionId, dismissed: v.boolean() }),
    result: none,
  }),
} as const;
