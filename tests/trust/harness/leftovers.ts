import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';

/** Names of files that nobody should find any more: half written, in a hidden place, or the journal of a closed database. */
export function leftoversIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => {
    const last = path.basename(name);
    return last.startsWith('.') || last.endsWith('.part') || /-(wal|shm|journal)$/.test(last);
  });
}
