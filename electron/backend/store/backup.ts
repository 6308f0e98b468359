import { closeSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { closeToOthers } from '../files/ownerAlone.ts';
import { partSuffix } from '../files/writeWhole.ts';
import { closeReading, openReading, run, type Writing } from './connection.ts';
import type { LibraryFolder } from './folder.ts';
import { checkStructure } from './inspect.ts';

/**
 * Writes a checked copy of the database into the backups folder and gives its path. `label` goes into the name.
 * Throws when the copy can't be made or is not sound; no half copy stays.
 */
export function backUp(connection: Writing, folder: LibraryFolder, label: string): string {
  const stamp = new Date().toISOString().replaceAll(/[:.]/g, '-');
  const target = path.join(folder.backups, `${label}-${stamp}.sqlite`);
  const part = target + partSuffix;
  try {
    run(connection, 'VACUUM INTO ?', part);
    assertSound(part);
    closeToOthers(part);
    flush(part, 'r+');
    renameSync(part, target);
    // Windows can't open folders; it has no need to.
    if (process.platform !== 'win32') flush(folder.backups, 'r');
  } catch (error) {
    for (const left of [part, `${part}-journal`]) rmSync(left, { force: true });
    throw error;
  }
  return target;
}

function assertSound(file: string): void {
  const copy = openReading(file);
  try {
    const findings = checkStructure(copy);
    if (findings.length > 0) throw new Error(`The backup is not sound: ${findings.join('; ')}`);
  } finally {
    closeReading(copy);
  }
}

function flush(place: string, flags: 'r' | 'r+'): void {
  const handle = openSync(place, flags);
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
