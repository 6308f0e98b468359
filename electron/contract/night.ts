import * as v from 'valibot';
import { sessionSummarySchema } from './desk.ts';
import { read } from './kinds.ts';
import { id, none } from './shapes.ts';

export const paceSchema = v.strictObject({
  minutesPerClip: v.number(),
  /** Which days it is told from. */
  by: v.picklist(['today', 'lastDays']),
});

/** Requests on what is left to do, over all sessions. */
export const nightRequests = {
  /** The session that is due after another one (null = the first), and from the start again after the last; null: no other is. */
  'night.next': read({
    params: v.strictObject({ after: v.nullable(id) }),
    result: v.strictObject({ session: v.nullable(sessionSummarySchema) }),
  }),
  /** How much is left to do. */
  'night.left': read({
    params: none,
    result: v.strictObject({
      /** Sessions somebody waits for. */
      sessions: v.number(),
      /** Those that were promised for a day before today. */
      late: v.number(),
      /** About how many of their clips still have to be judged. */
      clips: v.number(),
      /** There are more sessions than were counted. */
      more: v.boolean(),
      /** How fast it goes; null while too little was done to tell. */
      pace: v.nullable(paceSchema),
    }),
  }),
} as const;
