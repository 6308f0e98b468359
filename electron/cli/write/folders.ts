import { randomUUID } from 'node:crypto';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { makeFolder, removeEmptyFolders } from '../../backend/files/makeFolder.ts';

/**
 * Makes a folder if it is missing, with those above it, and does the work. If the work throws, the folders made here are
 * removed again, unless something is in them.
 */
export async function withFolder<T>(folder: string, work: () => Promise<T>): Promise<T> {
  const made = makeFolder(folder);
  try {
    return await work();
  } catch (error) {
    if (made !== null) await removeEmptyFolders(folder, made);
    throw error;
  }
}

/**
 * Lets `work` write into a staging folder inside `folder`, and moves what it wrote into place at the end; files of the same
 * names are replaced. If `work` throws, only what was made here is removed.
 */
export function withStagingFolder<T>(folder: string, work: (staging: string) => Promise<T>): Promise<T> {
  return withFolder(folder, async () => {
    const staging = path.join(folder, `.unfinished-${randomUUID()}`);
    try {
      await mkdir(staging);
      const result = await work(staging);
      await moveInto(folder, staging);
      return result;
    } catch (error) {
      await rm(staging, { recursive: true, force: true });
      throw error;
    }
  });
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
