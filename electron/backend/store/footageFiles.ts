import { stat } from 'node:fs/promises';
import path from 'node:path';
import { hashFile } from '../files/hashing.ts';
import { run } from './connection.ts';
import type { FootageRow } from './footage.ts';
import type { Library } from './library.ts';

/** One of the two files of footage: as it was filmed, or the copy that the window can play. */
export type FootageCopy = 'original' | 'playable';

/** How a file lies on the disk: as long, and changed last, as when its content was known to be right. */
export type AsItLies = { readonly sizeBytes: number; readonly modifiedMs: number };

type Known = { readonly [Fact in keyof AsItLies]: number | null } & {
  readonly name: string | null;
  readonly sha256: string | null;
};

const knownOf = (footage: FootageRow, copy: FootageCopy): Known =>
  copy === 'original'
    ? {
        name: footage.file,
        sizeBytes: footage.size_bytes,
        modifiedMs: footage.file_modified_ms,
        sha256: footage.sha256,
      }
    : {
        name: footage.proxy_file,
        sizeBytes: footage.proxy_size_bytes,
        modifiedMs: footage.proxy_modified_ms,
        sha256: footage.proxy_sha256,
      };

/** How a file lies; null where there is none. */
export async function lying(file: string): Promise<AsItLies | null> {
  const found = await stat(file).catch(() => undefined);
  return found?.isFile() ? { sizeBytes: found.size, modifiedMs: Math.floor(found.mtimeMs) } : null;
}

/** Files whose content was found to be another, by how they lay then: they need not be read again. */
const foundChanged = new WeakMap<Library, Map<string, string>>();

/**
 * Whether a file of footage holds something else than when it came into the library. Its length and time say so at once; where those differ its
 * content is read, and a file that was only touched is taken as it lies from then on. A file that is not there is not changed.
 * @param how what becomes of a file whose content was never looked at since it came in: read it, or take its length for enough
 */
export async function isChangedOnDisk(
  library: Library,
  footage: FootageRow,
  copy: FootageCopy,
  how: 'readUnknown' | 'trustLength',
): Promise<boolean> {
  const { name, sha256, ...known } = knownOf(footage, copy);
  if (name === null) return false;
  const file = path.join(library.folder.clips, name);
  const lies = await lying(file);
  if (lies === null) return false;
  if (known.modifiedMs === null && known.sizeBytes === lies.sizeBytes && how === 'trustLength') return false;
  if (known.modifiedMs === lies.modifiedMs && known.sizeBytes === lies.sizeBytes) return false;
  const changed = foundChanged.get(library) ?? new Map<string, string>();
  foundChanged.set(library, changed);
  const mark = `${lies.sizeBytes} ${lies.modifiedMs}`;
  if (changed.get(name) === mark) return true;
  const found = await hashFile(file).catch(() => null);
  if (found === null) return false;
  // The playable copy of an older library has no hash yet: it is taken for what it is now.
  if (sha256 !== null && found !== sha256) {
    changed.set(name, mark);
    return true;
  }
  keepAsItLies(library, footage.id, copy, { ...lies, sha256: found });
  return false;
}

/** Notes how a file lies whose content is right. */
export function keepAsItLies(
  library: Library,
  footageId: string,
  copy: FootageCopy,
  { sizeBytes, modifiedMs, sha256 }: AsItLies & { readonly sha256: string },
): void {
  if (copy === 'original') {
    run(library.writing, 'UPDATE footage SET file_modified_ms = ? WHERE id = ?', modifiedMs, footageId);
    return;
  }
  const sql = 'UPDATE footage SET proxy_size_bytes = ?, proxy_modified_ms = ?, proxy_sha256 = ? WHERE id = ?';
  run(library.writing, sql, sizeBytes, modifiedMs, sha256, footageId);
}
