import { randomUUID } from 'node:crypto';
import { step } from '../../../engine/wording/sayJob.ts';
import type { Context } from '../context/context.ts';
import { recordedByFile } from '../media/probe/recordedAt.ts';
import { cameBefore, forgetUnreadable, insertArrival } from '../store/arrivals.ts';
import { inTransaction } from '../store/connection.ts';
import type { FoundFilm } from './findFilms.ts';

/** What was taken in: how many films, and the job that reads them; null where none was. */
export type Taken = { readonly taken: number; readonly jobId: string | null };

/**
 * Puts films into the inbox, to be read by one job. Those that lie there already are left out, and where they come by
 * themselves (`everywhere`), those that ever came in.
 */
export function takeFilms(
  context: Pick<Context, 'emit' | 'jobs' | 'library'>,
  films: readonly FoundFilm[],
  known: 'inbox' | 'everywhere',
): Taken {
  const { reading, writing } = context.library();
  const fresh = films.filter((film) => !cameBefore(reading, film, known));
  if (fresh.length === 0) return { taken: 0, jobId: null };
  const batchId = randomUUID();
  inTransaction(writing, () => {
    for (const { path, folders, sizeBytes, modifiedMs } of fresh) {
      forgetUnreadable(writing, path);
      const recorded = recordedByFile(modifiedMs);
      insertArrival(writing, {
        ...{ id: randomUUID(), batch_id: batchId, path, folders: JSON.stringify(folders) },
        ...{ size_bytes: sizeBytes, modified_ms: modifiedMs },
        ...{ recorded_at: recorded.at, recorded_day: recorded.day },
      });
    }
  });
  const jobId = readBatch(context, batchId, fresh.length);
  context.emit({ name: 'inboxChanged', data: {} });
  return { taken: fresh.length, jobId };
}

/** Puts the reading of a batch in line. */
export const readBatch = ({ jobs }: Pick<Context, 'jobs'>, batchId: string, count: number): string =>
  jobs.add({
    kind: 'arrive',
    title: step('readIntoInbox', { count }),
    sessionId: null,
    task: { do: 'arrive', batchId },
  });
