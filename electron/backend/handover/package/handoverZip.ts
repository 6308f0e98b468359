import { createWriteStream } from 'node:fs';
import { rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import yazl from 'yazl';
import { ProblemError } from '../../../contract/reply.ts';
import { hashFile } from '../../files/hashing.ts';
import { settleForOwner } from '../../files/ownerAlone.ts';
import { partSuffix } from '../../files/writeWhole.ts';
import type { LibraryFolder } from '../../store/folder.ts';
import type { HandoverRow } from '../../store/handovers.ts';
import { isFootage, type Manifest, manifestName } from './manifest.ts';

/** What deflating makes no smaller. */
const packedAlready = /\.(?:mp4|jpe?g|png|pdf|zip)$/i;

/**
 * Writes files of a folder into one zip, a piece at a time; names are UTF-8, with `/`, and every file has the same time.
 * Throws what the disk says, or an AbortError.
 */
export async function zipFiles(
  folder: string,
  names: readonly string[],
  target: string,
  { at, signal }: { readonly at: string; readonly signal?: AbortSignal | undefined },
): Promise<void> {
  const zip = new yazl.ZipFile();
  const mtime = new Date(at);
  for (const name of names) {
    zip.addFile(path.join(folder, ...name.split('/')), name, {
      compress: !packedAlready.test(name),
      mtime,
      mode: 0o100644,
    });
  }
  const failed = new Promise<never>((_, reject) => zip.on('error', reject));
  zip.end();
  await Promise.race([pipeline(zip.outputStream, createWriteStream(target, { flags: 'wx' }), { signal }), failed]);
}

/** A kept zip: its name among the library's handovers, and its SHA-256. */
export type KeptFile = { readonly file: string; readonly sha256: string };

/** Keeps the documents of a handover that is written, as one zip among the library's files. Throws what the disk says. */
export async function keepFiles(
  library: LibraryFolder,
  written: string,
  { manifest, sessionId }: { readonly manifest: Manifest; readonly sessionId: string },
): Promise<KeptFile> {
  const file = `${sessionId}-v${manifest.handover}.zip`;
  const target = path.join(library.handovers, file);
  const part = `${target}${partSuffix}`;
  const names = [...manifest.files.map(({ name }) => name).filter((name) => !isFootage(name)), manifestName];
  await rm(part, { force: true });
  await zipFiles(written, names, part, { at: manifest.handedAt });
  const sha256 = await hashFile(part);
  await settleForOwner(part, target);
  return { file, sha256 };
}

/** What is wrong with the kept file of a handover; null when it is what was handed over. */
export async function judgeKept(folder: LibraryFolder, row: HandoverRow): Promise<'missing' | 'changed' | null> {
  const file = path.join(folder.handovers, row.file);
  if (!(await stat(file).catch(() => undefined))?.isFile()) return 'missing';
  return (await hashFile(file)) === row.sha256 ? null : 'changed';
}

/** The kept file of a handover, whole. Throws `library-damaged` when it is gone or was changed. */
export async function keptFile(folder: LibraryFolder, row: HandoverRow): Promise<string> {
  const trouble = await judgeKept(folder, row);
  if (trouble === null) return path.join(folder.handovers, row.file);
  const id = trouble === 'missing' ? 'keptFileMissing' : 'keptFileChanged';
  throw new ProblemError('library-damaged', id, { file: `handovers/${row.file}` });
}
