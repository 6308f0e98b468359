import * as v from 'valibot';
import { messageSchema } from '../../engine/message/message.ts';
import { act, read } from './kinds.ts';
import { id, none } from './shapes.ts';

export const jobSchema = v.strictObject({
  id,
  kind: v.picklist(['demo', 'import', 'arrive', 'proxy', 'measure', 'handover', 'narration']),
  /** What it is called: said by `sayJob`, like its step. */
  title: messageSchema,
  state: v.picklist(['waiting', 'running', 'done', 'failed', 'cancelled']),
  /** 0-1; null while unknown. */
  progress: v.nullable(v.number()),
  /** What it is doing, or why it failed; null where there is nothing to say. */
  message: v.nullable(messageSchema),
  /** Seconds until it is done, while it runs; null while that can't be told. */
  secondsLeft: v.nullable(v.number()),
  /** Seconds until it and those that wait behind it are done; null while that can't be told. */
  lineSecondsLeft: v.nullable(v.number()),
  sessionId: v.nullable(id),
  clipId: v.nullable(id),
});
export type Job = v.InferOutput<typeof jobSchema>;

/** Where a person puts a job in its line. */
export const lineMoves = ['up', 'down', 'first'] as const;
export type LineMove = (typeof lineMoves)[number];

export const jobRequests = {
  /** The jobs that are open, and the last that ended. */
  'jobs.list': read({ params: none, result: v.array(jobSchema) }),
  'jobs.cancel': act({ params: v.strictObject({ jobId: id }), result: none }),
  'jobs.retry': act({ params: v.strictObject({ jobId: id }), result: none }),
  /** Puts jobs that failed out of sight; they count as cancelled. */
  'jobs.dismiss': act({ params: v.strictObject({ jobIds: v.array(id) }), result: none }),
  /** The ids of the clips' jobs that wait to be measured, in the order they are taken up. */
  'jobs.line': read({ params: none, result: v.array(id) }),
  /** Puts one of them elsewhere in that order. */
  'jobs.move': act({ params: v.strictObject({ jobId: id, to: v.picklist(lineMoves) }), result: none }),
} as const;
