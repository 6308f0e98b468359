import { existsSync, mkdirSync } from 'node:fs';
import { rmdir } from 'node:fs/promises';
import path from 'node:path';

/**
 * Makes a folder and those above it that are missing, one after another; gives the topmost one made, null when all were
 * there. Throws what the disk says. Node's own recursive making never returns below a folder of the kernel's, such as
 * /proc, that refuses every new name with "no such file".
 */
export function makeFolder(folder: string): string | null {
  const missing: string[] = [];
  for (let at = path.resolve(folder); !existsSync(at); at = path.dirname(at)) missing.unshift(at);
  for (const each of missing) mkdirSync(each);
  return missing[0] ?? null;
}

/**
 * Undoes `makeFolder`: removes the folder and those above it, up to the topmost one made, as long as they are empty. A
 * folder that somebody has put something into meanwhile stays, with what is in it.
 */
export async function removeEmptyFolders(folder: string, topmost: string): Promise<void> {
  for (let at = path.resolve(folder); at.startsWith(topmost); at = path.dirname(at)) {
    const removed = await rmdir(at).then(
      () => true,
      () => false,
    );
    if (!removed) return;
  }
}
