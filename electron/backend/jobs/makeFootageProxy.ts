import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import path from 'node:path';
import { step } from '../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../contract/reply.ts';
import { tellChanged } from '../context/acting.ts';
import { assertUnchanged } from '../context/changedFiles.ts';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import { hashFile } from '../files/hashing.ts';
import { settleForOwner } from '../files/ownerAlone.ts';
import { partSuffix } from '../files/writeWhole.ts';
import { makeProxy } from '../media/write/proxy.ts';
import { inTransaction } from '../store/connection.ts';
import { type FootageRow, findFootage, sessionsOfFootage, setProxyFile } from '../store/footage.ts';
import { isChangedOnDisk, keepAsItLies, lying } from '../store/footageFiles.ts';
import { readFrameTable, writeFrameTable } from '../store/frameTables.ts';
import type { JobRow } from '../store/jobs.ts';
import type { Library } from '../store/library.ts';
import { insertNewJob, type JobTools } from './queue.ts';

/** Queues a playable copy within the caller's transaction, if the footage needs one; gives the job's id. */
export function queueProxy(
  library: Library,
  footage: FootageRow,
  { name, sessionId, clipId }: { readonly name: string; readonly sessionId?: string; readonly clipId?: string },
): string | undefined {
  if (footage.plays !== 'proxy' || hasProxy(library, footage)) return undefined;
  const task = { do: 'proxy', footageId: footage.id } as const;
  return insertNewJob(library, {
    kind: 'proxy',
    title: step('playableCopyOf', { clip: name }),
    sessionId: sessionId ?? null,
    ...(clipId !== undefined && { clipId }),
    task,
  });
}

/** Makes the playable copy of footage whose own codec the window can't play; the original stays untouched. */
export async function makeFootageProxy(
  context: Context,
  _job: JobRow,
  { signal, report }: JobTools,
  { footageId }: TaskOf<'proxy'>,
): Promise<void> {
  const library = context.library();
  const footage = findFootage(library.reading, footageId);
  const table = readFrameTable(library.reading, footageId, 'original');
  if (!footage?.file || !table) {
    throw new ProblemError('not-found', 'noFootageToCopy');
  }
  if (hasProxy(library, footage) && !(await isChangedOnDisk(library, footage, 'playable', 'readUnknown'))) return;
  await assertUnchanged(library, footage, 'readUnknown');
  const name = `${footage.sha256}-proxy.mp4`;
  const part = path.join(library.folder.clips, `${randomUUID()}${partSuffix}`);
  try {
    const onProgress = (share: number) => report(share, step('makingCopy'));
    const source = path.join(library.folder.clips, footage.file);
    const playback = await makeProxy(await context.mediaTools(), source, part, { table, onProgress, signal });
    const sha256 = await hashFile(part);
    await settleForOwner(part, path.join(library.folder.clips, name));
    const lies = await lying(path.join(library.folder.clips, name));
    inTransaction(library.writing, () => {
      setProxyFile(library.writing, footageId, name);
      if (lies !== null) keepAsItLies(library, footageId, 'playable', { ...lies, sha256 });
      writeFrameTable(library.writing, footageId, 'proxy', playback);
    });
  } finally {
    await rm(part, { force: true });
  }
  for (const sessionId of sessionsOfFootage(library.reading, footageId)) tellChanged(context, sessionId);
}

function hasProxy(library: Library, { proxy_file }: FootageRow): boolean {
  return proxy_file !== null && existsSync(path.join(library.folder.clips, proxy_file));
}
