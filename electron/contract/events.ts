import * as v from 'valibot';
import { jobSchema } from './jobs.ts';

const id = v.string();

/** Everything the backend tells without being asked. */
export const events = {
  jobChanged: v.strictObject({ job: jobSchema }),
  /** Something of a session changed in the database: read it again. */
  sessionChanged: v.strictObject({ sessionId: id }),
  /** Sessions or trainees came, went or changed. */
  deskChanged: v.strictObject({}),
  libraryChanged: v.strictObject({}),
  /** The backend process was started again after it died; all open questions were answered `backend-gone`. */
  backendRestarted: v.strictObject({}),
} as const;

export type EventName = keyof typeof events;
export type EventData<N extends EventName> = v.InferOutput<(typeof events)[N]>;
export type AnyEvent = { [N in EventName]: { readonly name: N; readonly data: EventData<N> } }[EventName];
