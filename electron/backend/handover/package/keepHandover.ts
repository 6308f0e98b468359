import { createHash } from 'node:crypto';
import { rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { gradeJson } from '../../../../engine/sheet/gradeJson.ts';
import { sheetJson } from '../../../../engine/sheet/sheetJson.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { sentHash } from '../../documents/sentLetter.ts';
import { hashFile } from '../../files/hashFile.ts';
import type { Writing } from '../../store/connection.ts';
import { type LibraryFolder, partSuffix } from '../../store/folder.ts';
import type { HandoverRow } from '../../store/handovers.ts';
import { insertSentLetter, listSentLetters } from '../../store/sentLetters.ts';
import type { LibrarySource } from '../source/librarySource.ts';
import { type Manifest, manifestName } from './manifest.ts';
import { zipFiles } from './zipFolder.ts';

/** A kept zip: its name among the library's handovers, and its SHA-256. */
export type KeptFile = { readonly file: string; readonly sha256: string };

/** Clips are large, and can be made again of the footage. */
const isKept = (name: string): boolean => !/^(?:clips|originals)\/.*\.mp4$/.test(name);

/** SHA-256 of all that a handover says and covers: the same again is the same version. */
export function contentHash({ plain, measures, catalogue, covered }: LibrarySource): string {
  const { letter, review, grade, style } = plain;
  const hash = createHash('sha256')
    .update(JSON.stringify([letter.document, review, gradeJson(grade, style.language)]))
    .update(sheetJson(review, grade, catalogue, { measures }));
  // A session without covers says what it said before there were any.
  if (covered.length > 0) hash.update(JSON.stringify(covered));
  return hash.digest('hex');
}

/** Keeps the documents of a handover that is written, as one zip among the library's files. Throws what the disk says. */
export async function keepFiles(
  library: LibraryFolder,
  written: string,
  { manifest, sessionId }: { readonly manifest: Manifest; readonly sessionId: string },
): Promise<KeptFile> {
  const file = `${sessionId}-v${manifest.handover}.zip`;
  const target = path.join(library.handovers, file);
  const part = `${target}${partSuffix}`;
  const names = [...manifest.files.map(({ name }) => name).filter(isKept), manifestName];
  await rm(part, { force: true });
  await zipFiles(written, names, part, { at: manifest.handedAt });
  const sha256 = await hashFile(part);
  await rename(part, target);
  return { file, sha256 };
}

/** The version of the sent letter that goes with a handover: the newest one where it says the same, else a new one. */
export function sentVersionOf(writing: Writing, { sessionId, sentAt, source }: SentWith): number {
  const { letter, review, grade, style } = source.plain;
  const texts = {
    document: JSON.stringify(letter.document),
    review: JSON.stringify(review),
    grade: JSON.stringify(gradeJson(grade, style.language)),
  };
  const sha256 = sentHash(texts);
  const newest = listSentLetters(writing, sessionId).at(-1);
  if (newest?.sha256 === sha256) return newest.version;
  const sent = insertSentLetter(writing, {
    session_id: sessionId,
    sent_at: sentAt,
    rubric_version: grade.rubric.version,
    letter: grade.state.kind === 'none' ? '' : grade.state.mark,
    ...texts,
    sha256,
  });
  return sent.version;
}

type SentWith = { readonly sessionId: string; readonly sentAt: string; readonly source: LibrarySource };

/** What is wrong with the kept file of a handover, in one sentence; null when it is what was handed over. */
export async function judgeKept(folder: LibraryFolder, row: HandoverRow): Promise<string | null> {
  const name = `handovers/${row.file}`;
  const file = path.join(folder.handovers, row.file);
  if (!(await stat(file).catch(() => undefined))?.isFile()) return `The file "${name}" is missing.`;
  return (await hashFile(file)) === row.sha256 ? null : `The file "${name}" is no longer what was handed over.`;
}

/** The kept file of a handover, whole. Throws `library-damaged` when it is gone or was changed. */
export async function keptFile(folder: LibraryFolder, row: HandoverRow): Promise<string> {
  const trouble = await judgeKept(folder, row);
  if (trouble === null) return path.join(folder.handovers, row.file);
  throw new ProblemError('library-damaged', `${trouble.slice(0, -1)}, so nothing was written; restore a backup of it.`);
}
