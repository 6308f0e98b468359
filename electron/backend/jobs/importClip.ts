import { randomUUID } from 'node:crypto';
import { ProblemError } from '../../contract/reply.ts';
import { clipName } from '../arrivals/clipName.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import { perform } from '../store/acts.ts';
import { nextClipOrdinal } from '../store/clips.ts';
import { inTransaction } from '../store/connection.ts';
import { findEntry } from '../store/entries.ts';
import { sessionShowsFootage } from '../store/footage.ts';
import { finishJob, type JobRow } from '../store/jobs.ts';
import { importFootage } from './importFootage.ts';
import { queueProxy } from './makeFootageProxy.ts';
import type { JobTools } from './queue.ts';

/** Imports one clip into an exercise entry: its file, its footage, and the act that adds it, or nothing at all. */
export async function importClip(context: Context, job: JobRow, tools: JobTools, task: TaskOf<'clip'>): Promise<void> {
  const library = context.library();
  findEntry(library.reading, task.entryId);
  const imported = await importFootage(library, await context.mediaTools(), task.path, tools);
  const name = clipName(task.path);
  const clipId = randomUUID();
  let proxyJob: string | undefined;
  try {
    if (sessionShowsFootage(library.reading, task.sessionId, imported.footage.id)) {
      throw new ProblemError('conflict', 'alreadyInSession', { file: name });
    }
    inTransaction(library.writing, () => {
      findEntry(library.writing, task.entryId);
      imported.record(library.writing);
      const about = { sessionId: task.sessionId, actorName: actorName(library), kind: 'undoable' } as const;
      perform(library.writing, about, (changes) => {
        changes.insert('clip', {
          id: clipId,
          entry_id: task.entryId,
          footage_id: imported.footage.id,
          ordinal: nextClipOrdinal(changes.reading, task.entryId),
          name,
          view: task.view,
          real_time_factor: Math.min(100, Math.max(0.01, imported.footage.real_time_factor)),
          load_kg: null,
        });
        return { name: { id: 'clipAdded', values: { clip: name } }, value: undefined };
      });
      proxyJob = queueProxy(library, imported.footage, { name, sessionId: task.sessionId, clipId });
      finishJob(library.writing, job.id, { sessionId: task.sessionId, clipId });
    });
  } catch (error) {
    await imported.discard();
    throw error;
  }
  tellChanged(context, task.sessionId);
  if (proxyJob !== undefined) context.jobs.tell(proxyJob);
}
