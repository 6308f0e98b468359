import { randomUUID } from 'node:crypto';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { makeFolder, removeEmptyFolders } from '../../backend/files/makeFolder.ts';

/**
 * Lets `work` write into a folder of its own inside `folder`, which is made if it isn't there, and moves what was written
 * into place at the end; files of the same names are replaced. If `work` throws, only what was made here is removed.
 */
export async function withStagingFolder<T>(folder: string, work: (staging: string) => Promise<T>): Promise<T> {
  const made = makeFolder(folder);
  const staging = path.join(folder, `.unfinished-${randomUUID()}`);
  try {
    await mkdir(staging);
    const result = await work(staging);
    await moveInto(folder, staging);
    return result;
  } catch (error) {
    await rm(staging, { recursive: true, force: true });
    if (made !== null) await removeEmptyFolders(folder, made);
    throw error;
  }
}

/** Moves everything in `source` into `target`, which keeps what it holds; removes `source`. */
async function moveInto(target: string, source: string): Promise<void> {
  await mkdir(target, { recursive: true });
  for (const entry of await readdir(source, { withFileTypes: true })) {
    const [from, to] = [path.join(source, entry.name), path.join(target, entry.name)];
    if (entry.isDirectory()) await moveInto(to, from);
    else await rename(from, to);
  }
  await rm(source, { recursive: true });
}
