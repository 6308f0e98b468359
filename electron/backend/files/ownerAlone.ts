import { chmodSync, lstatSync } from 'node:fs';
import { chmod } from 'node:fs/promises';
import { settleFile } from './writeWhole.ts';

/** What a folder and a file are made with that no other user of the machine may read. Windows has no such modes, and ignores them. */
export const folderForOwner = 0o700;
export const fileForOwner = 0o600;

/** What other users may do. */
const others = 0o077;

const hasModes = process.platform !== 'win32';

/**
 * Takes from a file or folder what others may do with it, and never gives anything; says whether there was anything to take. Links and what is
 * not there are left alone, and so is what the disk or its owner doesn't let us change.
 */
export function closeToOthers(path: string): boolean {
  if (!hasModes) return false;
  const found = lstatSync(path, { throwIfNoEntry: false });
  if (found === undefined || found.isSymbolicLink() || (found.mode & others) === 0) return false;
  try {
    chmodSync(path, found.mode & 0o7777 & ~others);
    return true;
  } catch {
    return false;
  }
}

/** Gives one of the library's files its name for good, for its owner alone. */
export async function settleForOwner(part: string, target: string): Promise<void> {
  // A disk without modes keeps the file all the same.
  if (hasModes) await chmod(part, fileForOwner).catch(() => undefined);
  await settleFile(part, target);
}
