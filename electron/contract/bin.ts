import * as v from 'valibot';
import { messageSchema } from '../../engine/message/message.ts';
import type { Flag } from '../../engine/review/review.ts';
import { posterSchema } from './desk.ts';
import { act, read } from './kinds.ts';
import { engineType, id, isoTime, keptDate, none } from './shapes.ts';

/** `file`: a film that was removed from the inbox. */
const kind = v.picklist(['session', 'entry', 'clip', 'file']);

export const binItemSchema = v.strictObject({
  kind,
  id,
  /** Null for a file of the inbox. */
  sessionId: v.nullable(id),
  removedAt: isoTime,
  /** For how many days it can be brought back; 0 = it goes when the library is next opened. */
  daysLeft: v.number(),
  traineeName: v.string(),
  title: v.string(),
  date: v.nullable(keptDate),
  /** Null for a session. */
  exercise: v.nullable(v.string()),
  /** Null for all but a clip and a file. */
  clipName: v.nullable(v.string()),
  clips: v.number(),
  /** A clip to be recognised by. */
  poster: v.nullable(posterSchema),
});
export type BinItem = v.InferOutput<typeof binItemSchema>;

/** Requests on what was removed, what is parked, and the undo of the desk. */
export const binRequests = {
  /** Puts a session and its second looks into the bin. */
  'sessions.remove': act({ params: v.strictObject({ sessionId: id }), result: none }),
  /** What lies in the bin, what was removed last first. */
  'bin.list': read({ params: none, result: v.array(binItemSchema) }),
  'bin.restore': act({ params: v.strictObject({ kind, id }), result: none }),
  /** Deletes one thing that lies in the bin for good, with all that hangs on it; no undo brings it back. */
  'bin.delete': act({ params: v.strictObject({ kind, id }), result: none }),
  /** Deletes all that lies in the bin for good. */
  'bin.empty': act({ params: none, result: none }),
  /** Takes the newest act on a session as a whole back; gives its name. */
  'desk.undo': act({ params: none, result: v.strictObject({ name: messageSchema }) }),
  /** Does the act again that the desk's undo took back last; gives its name. */
  'desk.redo': act({ params: none, result: v.strictObject({ name: messageSchema }) }),
  /** What was judged in a session and means nothing for the exercises that its clips are judged as by now. */
  'parked.get': read({
    params: v.strictObject({ sessionId: id }),
    result: v.strictObject({
      flags: v.array(engineType<Flag>()),
      /** How many ticks of a criterion are parked on a clip. */
      ticks: v.array(v.strictObject({ clipId: id, criterion: v.string(), count: v.number() })),
    }),
  }),
  /** Discards parked flags and ticks of a clip; without criteria or flags named, all of them. */
  'parked.discard': act({
    params: v.strictObject({
      clipId: id,
      flagIds: v.optional(v.array(id)),
      criteria: v.optional(v.array(v.string())),
    }),
    result: none,
  }),
} as const;
