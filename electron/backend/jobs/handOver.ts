import { rm } from 'node:fs/promises';
import path from 'node:path';
import { onSectionClocks } from '../../../engine/edition/sectionClock.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import { sentVersionOf } from '../documents/sentLetter.ts';
import { type Delivered, deliverHandover } from '../handover/package/deliverHandover.ts';
import { type KeptFile, keepFiles } from '../handover/package/handoverZip.ts';
import { contentHash, type LibrarySource, librarySource } from '../handover/source/librarySource.ts';
import { deriveAnew, recordAct } from '../store/acts.ts';
import { inSnapshot, inTransaction } from '../store/connection.ts';
import { type HandoverRow, insertDelivery, insertHandover, listHandovers } from '../store/handovers.ts';
import { finishJob, type JobRow } from '../store/jobs.ts';
import type { Library } from '../store/library.ts';
import { readStanding, writeSent } from '../store/night.ts';
import { assertWritable } from '../store/sessions.ts';
import type { JobTools } from './queue.ts';

/**
 * Hands a session over and keeps what was handed over. What says the same as the version before is written out as that
 * version. Whole or not at all: a job that fails or is cancelled leaves neither files nor rows.
 */
export async function handOver(
  context: Context,
  job: JobRow,
  { signal, report }: JobTools,
  { sessionId, folder, options }: TaskOf<'handover'>,
): Promise<void> {
  const library = context.library();
  assertWritable(library.reading, sessionId);
  const { source, content, stood } = inSnapshot(library.reading, () => {
    const asWanted = librarySource(context, sessionId, 'asWanted');
    const { names = asWanted.edition.names } = options;
    return {
      source: names === asWanted.edition.names ? asWanted : librarySource(context, sessionId, names),
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
  let kept: KeptFile | null = null;
  const delivered = await deliverHandover(
    await context.mediaTools(),
    order,
    { folder, workId: job.id },
    { signal, report },
    async (written, manifest) => {
      if (same === null) kept = await keepFiles(library.folder, written, { manifest, sessionId });
    },
  );
  try {
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
      finishJob(library.writing, job.id, { sessionId, clipId: null });
    });
  } catch (error) {
    await rm(delivered.path, { recursive: true, force: true });
    throw error;
  }
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
