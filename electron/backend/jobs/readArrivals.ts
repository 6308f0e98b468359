import path from 'node:path';
import { readView } from '../../../engine/motion/view/readView.ts';
import { step, stepOf } from '../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import { recordedByFile } from '../media/probe/recordedAt.ts';
import { type ArrivalRow, nextToRead, setRead, setUnreadable, sizeOfBatch } from '../store/arrivals.ts';
import { inTransaction, type Reading } from '../store/connection.ts';
import type { JobRow } from '../store/jobs.ts';
import { findRecordingStamp, readRecordedParts } from '../store/recordings.ts';
import { textOfMessage } from '../store/storedMessage.ts';
import { importFootage } from './importFootage.ts';
import { queueProxy } from './makeFootageProxy.ts';
import type { JobTools } from './queue.ts';

/**
 * Reads the files of a batch into the inbox, one after the other, each whole or not at all: one that can't be read says
 * why and holds up no other. What a quit or a cancelling leaves is read when the job goes on.
 */
export async function readArrivals(
  context: Context,
  _job: JobRow,
  tools: JobTools,
  { batchId }: TaskOf<'arrive'>,
): Promise<void> {
  const { reading } = context.library();
  for (;;) {
    if (tools.signal.aborted) throw new ProblemError('cancelled', 'cancelled');
    const arrival = nextToRead(reading, batchId);
    if (arrival === undefined) return;
    await readOne(context, arrival, { signal: tools.signal, report: shareOfBatch(reading, arrival, tools) });
    context.emit({ name: 'inboxChanged', data: {} });
  }
}

async function readOne(context: Context, arrival: ArrivalRow, tools: JobTools): Promise<void> {
  const library = context.library();
  let discard = async (): Promise<void> => undefined;
  let proxyJob: string | undefined;
  try {
    const imported = await importFootage(library, await context.mediaTools(), arrival.path, tools);
    discard = imported.discard;
    const recorded = imported.recordedAt ?? recordedByFile(arrival.modified_ms);
    inTransaction(library.writing, () => {
      imported.record(library.writing);
      setRead(library.writing, arrival.id, {
        footage_id: imported.footage.id,
        recorded_at: recorded.at,
        recorded_day: recorded.day,
        recorded_by: imported.recordedAt === null ? 'file' : 'film',
        seen_from: seenFrom(library.reading, imported.footage.id),
      });
      proxyJob = queueProxy(library, imported.footage, { name: path.basename(arrival.path) });
    });
  } catch (error) {
    await discard();
    if (!isTheFilesOwn(error)) throw error;
    setUnreadable(library.writing, arrival.id, textOfMessage(error.problem.message));
  }
  if (proxyJob !== undefined) context.jobs.tell(proxyJob);
}

/** Whether an error says that this file can't be read, so that the next one may be. */
const isTheFilesOwn = (error: unknown): error is ProblemError =>
  error instanceof ProblemError && ['bad-media', 'not-found', 'conflict'].includes(error.problem.code);

/** Where the joints say the camera stood, for a film that was measured before. */
function seenFrom(reading: Reading, footageId: string): ArrivalRow['seen_from'] {
  if (findRecordingStamp(reading, footageId, 'joints', []) === undefined) return null;
  const joints = readRecordedParts(reading, footageId, []).joints?.found;
  return (joints && readView(joints)?.view) ?? null;
}

/** Reports how far a file is as a share of its whole batch, by size. */
function shareOfBatch(reading: Reading, arrival: ArrivalRow, { report }: JobTools): JobTools['report'] {
  const { allBytes, leftBytes } = sizeOfBatch(reading, arrival.batch_id);
  const name = path.basename(arrival.path);
  return (share, doing) => {
    const done = allBytes - leftBytes + (share ?? 0) * arrival.size_bytes;
    report(allBytes === 0 ? null : done / allBytes, stepOf(name, doing ?? step('finishing')));
  };
}
