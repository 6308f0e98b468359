import * as v from 'valibot';
import { languageSchema } from '../../engine/language/language.ts';
import { sessionSummarySchema } from './desk.ts';
import { jobSchema } from './jobs.ts';

const id = v.string();

/** Everything the backend tells without being asked. */
export const events = {
  jobChanged: v.strictObject({ job: jobSchema }),
  /** Which clips wait to be measured changed, or their order. */
  lineChanged: v.strictObject({}),
  /** A session changed in the database; with its line on the desk, null once the session is gone. */
  sessionChanged: v.strictObject({ sessionId: id, summary: v.nullable(sessionSummarySchema) }),
  /** Something came into the inbox, left it, or was said of it. */
  inboxChanged: v.strictObject({}),
  /** Trainees came, or changed. */
  traineesChanged: v.strictObject({}),
  libraryChanged: v.strictObject({}),
  /** What is set for the whole library changed. */
  settingsChanged: v.strictObject({}),
  /** A person chose the language of the desk in the window's menu; told by the window's host. */
  languageChosen: v.strictObject({ language: languageSchema }),
  /** The system asked to open a review or a handover, which waits to be received; told by the window's host. */
  fileNamed: v.strictObject({}),
  /** A person asked in the window's menu what this program is; told by the window's host. */
  aboutAsked: v.strictObject({}),
  /** The backend process was started again after it died; all open questions were answered `backend-gone`. */
  backendRestarted: v.strictObject({}),
} as const;

export type EventName = keyof typeof events;
export type EventData<N extends EventName> = v.InferOutput<(typeof events)[N]>;
export type AnyEvent = { [N in EventName]: { readonly name: N; readonly data: EventData<N> } }[EventName];
