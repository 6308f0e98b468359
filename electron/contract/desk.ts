import * as v from 'valibot';
import { sessionStates } from '../../engine/night/sessionState.ts';
import { read } from './kinds.ts';
import { id, keptDate, none, pageParams } from './shapes.ts';
import { namedTraineeSchema } from './trainees.ts';

/** A clip to be recognised by its poster, and how it shows its footage, which makes the picture's address. */
export const posterSchema = v.strictObject({ clipId: id, look: v.string() });

export const sessionSummarySchema = v.strictObject({
  id,
  traineeId: id,
  traineeName: v.string(),
  title: v.string(),
  date: keptDate,
  /** Exercise ids in order. */
  exercises: v.array(v.string()),
  clips: v.number(),
  /** The first clips that have a poster, at most three, to be recognised by. */
  posters: v.array(posterSchema),
  flags: v.number(),
  /** The session's mark, or '' while there is none. */
  mark: v.string(),
  provisional: v.boolean(),
  /** The coach set the session's grade, or one of its exercises', by hand. */
  byHand: v.boolean(),
  /** The session it judges again, blind; null for a session of its own. */
  secondLookOf: v.nullable(id),
  /** It came from another coach's Rackside: acts on it are refused. */
  readOnly: v.boolean(),
  /** Its trainee is archived: it is on no list that a person works through. */
  archived: v.boolean(),
  /** The coach said that it is finished without a letter: nothing is due of it. */
  finished: v.boolean(),
  /** Something of it changed on the disk by itself: it can't be opened, and what this line says of it may be wrong. */
  damaged: v.boolean(),
  /** 0-1, mean over entries. */
  coverage: v.number(),
  state: v.picklist(sessionStates),
  /** When its first clip came; '' without clips. */
  cameAt: v.string(),
  /** How many of its clips have been measured. */
  measured: v.number(),
  /** About how many of its clips still have to be judged. */
  clipsLeft: v.number(),
});
export type SessionSummary = v.InferOutput<typeof sessionSummarySchema>;

/** Requests on what lies on the desk. */
export const deskRequests = {
  /**
   * One page of sessions: `newest` holds all of them, the newest day first; `due` those with something to do, what came
   * first first; `done` the rest, and `secondLooks` those that judge another one again, the newest day first.
   */
  'desk.sessions': read({
    params: v.strictObject({
      list: v.optional(v.picklist(['newest', 'due', 'done', 'secondLooks']), 'newest'),
      ...pageParams,
    }),
    /** `next` is null on the last page. */
    result: v.strictObject({ sessions: v.array(sessionSummarySchema), next: v.nullable(v.string()) }),
  }),
  'desk.session': read({ params: v.strictObject({ sessionId: id }), result: sessionSummarySchema }),
  /** Every trainee, by name. */
  'desk.trainees': read({ params: none, result: v.array(namedTraineeSchema) }),
} as const;
