import { randomUUID } from 'node:crypto';
import { cp, mkdir, rm } from 'node:fs/promises';
import path from 'node:path';
import { makeFolder } from '../../backend/files/makeFolder.ts';

/**
 * Lets work write into a folder of its own within a folder, and moves what it wrote there when it is done; a folder that
 * is not there is made. When it throws, the folder is as it was.
 */
export async function cleanFolder<T>(folder: string, work: (staging: string) => Promise<T>): Promise<T> {
  const made = makeFolder(folder);
  const staging = path.join(folder, `.unfinished-${randomUUID()}`);
  try {
    await mkdir(staging);
    const result = await work(staging);
    await cp(staging, folder, { recursive: true });
    await rm(staging, { recursive: true, force: true });
    return result;
  } catch (error) {
    await rm(staging, { recursive: true, force: true });
    if (made !== null) await rm(made, { recursive: true, force: true });
    throw error;
  }
}
