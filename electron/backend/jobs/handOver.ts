import path from 'node:path';
import { onSectionClocks } from '../../../engine/edition/sectionClock.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import { assertNamesClear } from '../documents/nameDoubts.ts';
import { sentVersionOf } from '../documents/sentLetter.ts';
import { type Delivered, deliverHandover, nameRecorded } from '../handover/package/deliverHandover.ts';
import { type KeptFile, keepFiles } from '../handover/package/handoverZip.ts';
import { contentHash, type LibrarySource, librarySource } from '../handover/source/librarySource.ts';
import { deriveAnew, recordAct } from '../store/acts.ts';
import { inSnapshot, inTransaction } from '../store/connection.ts';
import {
  findDelivery,
  type HandoverRow,
  insertDelivery,
  insertHandover,
  listHandovers,
  removeDelivery,
} from '../store/handovers.ts';
import { finishJob, type JobRow } from '../store/jobs.ts';
import type { Library } from '../store/library.ts';
import { readStanding, writeSent } from '../store/night.ts';
import { assertWritable } from '../store/sessions.ts';
import type { JobTools } from './queue.ts';

/**
 * Hands a session over and keeps what was handed over. What says the same as the version before is written out as that
 * version. Whole or not at all: a job that fails or is cancelled leaves neither files nor rows. It counts as handed over from
 * its record on, and gets its name then.
 */
export async function handOver(
  context: Context,
  job: JobRow,
  { signal, report }: JobTools,
  { sessionId, folder, options }: TaskOf<'handover'>,
): Promise<void> {
  const library = context.library();
  assertWritable(library.reading, sessionId);
  const recorded = findDelivery(library.reading, job.id);
  if (recorded !== undefined) {
    // It was ended between record and name, and is begun anew: what it wrote is what was handed over.
    if (await nameRecorded(recorded.path, job.id)) return finish(context, job, sessionId);
    removeDelivery(library.writing, job.id);
  }
  const { source, content, stood } = inSnapshot(library.reading, () => {
    const asWanted = librarySource(context, sessionId, 'asWanted');
    const { names = asWanted.edition.names } = options;
    const asNamed = names === asWanted.edition.names ? asWanted : librarySource(context, sessionId, names);
    // The session may have been changed since it was put in line.
    assertNamesClear(context, sessionId, asNamed.edition, options.narrated ? 'all' : 'none');
    return {
      source: asNamed,
      content: contentHash(asWanted),
      stood: readStanding(library.reading, sessionId),
    };
  });
  const { names } = source.edition;
  const before = listHandovers(library.reading, sessionId).at(-1);
  const same = before?.content_sha256 === content && before.names === names ? before : null;
  const version = same?.version ?? (before?.version ?? 0) + 1;
  const handedAt = new Date().toISOString();
  const order = { source, options, version, handedAt };
  const record = async (written: string, delivered: Delivered): Promise<void> => {
    const kept =
      same === null ? await keepFiles(library.folder, written, { manifest: delivered.manifest, sessionId }) : null;
    inTransaction(library.writing, () => {
      writeSent(library.writing, sessionId, handedAt, stood);
      const row = same ?? keepRow(library, { source, content, delivered, kept });
      insertDelivery(library.writing, {
        job_id: job.id,
        handover_id: row.id,
        delivered_at: handedAt,
        path: delivered.path,
        bytes: delivered.bytes,
        failed: JSON.stringify(delivered.manifest.failed),
      });
      deriveAnew(library.writing, sessionId);
    });
  };
  const target = { folder, workId: job.id };
  await deliverHandover(await context.mediaTools(), order, target, { signal, report }, record);
  finish(context, job, sessionId);
}

function finish(context: Context, job: JobRow, sessionId: string): void {
  finishJob(context.library().writing, job.id, { sessionId, clipId: null });
  tellChanged(context, sessionId);
}

type NewVersion = {
  readonly source: LibrarySource;
  readonly content: string;
  readonly delivered: Delivered;
  readonly kept: KeptFile | null;
};

function keepRow(library: Library, { source, content, delivered, kept }: NewVersion): HandoverRow {
  const { sessionId, actId } = source;
  const { manifest } = delivered;
  if (kept === null) throw new Error('A new handover was written out and not kept.');
  const letterVersion = sentVersionOf(
    library.writing,
    { ...source, edition: onSectionClocks(source.edition) },
    manifest.handedAt,
  );
  recordAct(
    library.writing,
    { sessionId, actorName: actorName(library), kind: 'once' },
    { id: 'handedOver', values: { version: manifest.handover, file: path.basename(delivered.path) } },
  );
  return insertHandover(library.writing, {
    session_id: sessionId,
    version: manifest.handover,
    handed_at: manifest.handedAt,
    rubric_version: manifest.rubric.version,
    letter_version: letterVersion,
    names: manifest.names,
    manifest: JSON.stringify(manifest),
    content_sha256: content,
    ...kept,
    last_act: actId,
  });
}
