import * as v from 'valibot';
import { act, read } from './kinds.ts';
import { id, keptDate, none } from './shapes.ts';

/** In front of which of its new neighbours something comes; null = behind all of them. */
const before = v.optional(v.nullable(id), null);

const placeSchema = v.strictObject({
  sessionId: id,
  title: v.string(),
  date: keptDate,
  entries: v.array(v.strictObject({ entryId: id, exercise: v.string() })),
});
/** A session that clips can be moved into, with its exercises. */
export type Place = v.InferOutput<typeof placeSchema>;

/** Requests that move and merge what is there, with all that was judged on it. */
export const arrangingRequests = {
  /**
   * Moves a clip, within its exercise too. To a `session` it goes into the entry of its exercise there, to an `exercise`
   * into the entry of that exercise in its own session; either is made when missing. What means nothing for the exercise
   * it comes to is parked.
   */
  'clips.move': act({
    params: v.strictObject({
      clipId: id,
      to: v.variant('kind', [
        v.strictObject({ kind: v.literal('entry'), entryId: id, before }),
        v.strictObject({ kind: v.literal('session'), sessionId: id }),
        v.strictObject({ kind: v.literal('exercise'), exercise: v.string() }),
      ]),
    }),
    result: none,
  }),
  /** Moves an exercise with its clips, within its session or into another one. */
  'entries.move': act({
    params: v.strictObject({ entryId: id, sessionId: v.optional(id), before }),
    result: none,
  }),
  /** Puts the clips of an entry behind those of another one of the same exercise and session. */
  'entries.merge': act({ params: v.strictObject({ entryId: id, into: id }), result: none }),
  /** Gives a session to another trainee, and its second looks with it. */
  'sessions.move': act({ params: v.strictObject({ sessionId: id, traineeId: id }), result: none }),
  /** Puts the exercises and clips of a session into another one of the same trainee and day, and itself into the bin. */
  'sessions.merge': act({ params: v.strictObject({ sessionId: id, into: id }), result: none }),
  'sessions.rename': act({
    params: v.strictObject({ sessionId: id, title: v.pipe(v.string(), v.trim(), v.maxLength(200)) }),
    result: none,
  }),
  /** Says that a session is finished without a letter, or takes it up again. */
  'sessions.finish': act({ params: v.strictObject({ sessionId: id, finished: v.boolean() }), result: none }),
  /** Where what is in a session can go: the newest sessions of its trainee, or of the one named, with their exercises. */
  'sessions.places': read({
    params: v.strictObject({ sessionId: id, traineeId: v.optional(id) }),
    result: v.strictObject({ traineeId: id, places: v.array(placeSchema) }),
  }),
} as const;
