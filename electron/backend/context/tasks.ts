import * as v from 'valibot';
import { viewSchema } from '../../../engine/exercises/exercise.ts';
import { handoverOptionsSchema } from '../../contract/handover.ts';

/** What a job is to do, as it is stored; read again after a restart. */
export const taskSchema = v.variant('do', [
  v.strictObject({ do: v.literal('demo'), sessionId: v.string(), earlierId: v.optional(v.string()) }),
  v.strictObject({
    do: v.literal('review'),
    path: v.string(),
    sessionId: v.string(),
    footageOutside: v.optional(v.array(v.string()), []),
  }),
  v.strictObject({
    do: v.literal('clip'),
    path: v.string(),
    sessionId: v.string(),
    entryId: v.string(),
    view: v.nullable(viewSchema),
  }),
  /** Reads the files of a batch into the inbox. */
  v.strictObject({ do: v.literal('arrive'), batchId: v.string() }),
  v.strictObject({ do: v.literal('proxy'), footageId: v.string() }),
  v.strictObject({ do: v.literal('measure'), clipId: v.string(), joints: v.boolean(), again: v.boolean() }),
  v.strictObject({
    do: v.literal('handover'),
    sessionId: v.string(),
    folder: v.string(),
    options: handoverOptionsSchema,
  }),
  /** `path`: the file to write. */
  v.strictObject({ do: v.literal('narration'), clipId: v.string(), path: v.string() }),
  /** `path`: a handover's folder or zip. */
  v.strictObject({ do: v.literal('takeHandover'), path: v.string(), sessionId: v.string() }),
]);
export type Task = v.InferOutput<typeof taskSchema>;
export type TaskOf<D extends Task['do']> = Extract<Task, { do: D }>;
