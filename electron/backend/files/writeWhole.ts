import { randomUUID } from 'node:crypto';
import { open, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import { flushFile, flushFolder } from './flush.ts';

/** Ends the names of files that are still being written. */
export const partSuffix = '.part';

/**
 * Writes a file whole or not at all: under a temporary name in the same folder, flushed, then renamed.
 *
 * Throws `not-found` when the folder isn't there, `conflict` when the path is a folder, `disk` when writing fails.
 */
export async function writeWhole(target: string, bytes: Uint8Array): Promise<void> {
  const folder = path.dirname(target);
  const place = await stat(folder).catch(() => undefined);
  if (!place?.isDirectory()) {
    throw new ProblemError('not-found', 'folderGone', { folder });
  }
  const former = await stat(target).catch(() => undefined);
  if (former?.isDirectory()) {
    throw new ProblemError('conflict', 'isFolder', { file: target });
  }
  const part = path.join(folder, `.${randomUUID()}${partSuffix}`);
  try {
    const file = await open(part, 'wx');
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(part, target);
    await flushFolder(folder);
  } catch (error) {
    await rm(part, { force: true });
    throw new ProblemError('disk', 'notWritten', { file: path.basename(target), folder }, { cause: error });
  }
}

/** Gives a finished file its name for good, so that a power cut can't take the name back. */
export async function settleFile(part: string, target: string): Promise<void> {
  await flushFile(part);
  await rename(part, target);
  await flushFolder(path.dirname(target));
}
