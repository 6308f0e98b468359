import { existsSync, statSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import { hashFile } from '../files/hashing.ts';
import { all, closeReading, first, numberPragma, openReading, type Reading } from './connection.ts';
import type { LibraryFolder } from './folder.ts';
import type { FootageRow } from './footage.ts';
import { isSchemaSound, keepsDigests, listDiffering } from './rowDigests.ts';

/** Marks the file as a library of this program, in the file's header. */
export const applicationId = 0x52_43_4b_53;

/** What a look at the database file found; `none` = not there, or begun and never finished. */
export type Inspection = { readonly kind: 'none' } | { readonly kind: 'sound'; readonly version: number };

/**
 * Looks at a library's file without changing it.
 *
 * Throws `library-damaged` when it is no sound library, `library-newer` when its version is above `newestVersion`.
 */
export function inspectLibrary(folder: LibraryFolder, newestVersion: number): Inspection {
  if (!existsSync(folder.database) || statSync(folder.database).size === 0) return { kind: 'none' };
  let connection: Reading | undefined;
  try {
    connection = openReading(folder.database);
    return judge(connection, folder, newestVersion);
  } catch (error) {
    // What the disk refuses says nothing of what is in the file.
    throw error instanceof ProblemError || isOfDisk(error) ? error : damaged(folder, error);
  } finally {
    if (connection) closeReading(connection);
  }
}

function judge(connection: Reading, folder: LibraryFolder, newestVersion: number): Inspection {
  const owner = numberPragma(connection, 'application_id');
  const version = numberPragma(connection, 'user_version');
  if (owner === 0 && version === 0 && !first(connection, 'SELECT 1 FROM sqlite_schema')) return { kind: 'none' };
  if (owner !== applicationId) {
    throw new ProblemError('library-damaged', 'noLibraryFile', { file: folder.database });
  }
  if (version > newestVersion) {
    throw new ProblemError('library-newer', 'libraryNewer', { folder: folder.root });
  }
  const findings = checkStructure(connection);
  if (findings.length > 0) throw damaged(folder, findings.join('; '));
  if (keepsDigests(connection) && !isSchemaSound(connection)) throw damaged(folder, 'the schema is not as it was made');
  const differing = keepsDigests(connection) ? listDiffering(connection, ['library']) : [];
  if (differing.length > 0) throw damaged(folder, `rows of ${differing[0]?.table} are not as they were written`);
  return { kind: 'sound', version };
}

/**
 * What SQLite finds wrong with the file's structure; empty when it is sound. Its quick check would let an index pass that says
 * something else than the rows, and queries read from both.
 */
export function checkStructure(connection: Reading): string[] {
  const rows = all<{ integrity_check: string }>(connection, 'PRAGMA integrity_check(20)');
  return rows.map((row) => row.integrity_check).filter((finding) => finding !== 'ok');
}

/** Whether an error is the disk's or the system's: the file may be as sound as ever. */
function isOfDisk(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return /^(E[A-Z]+|SQLITE_(READONLY|CANTOPEN|PERM|IOERR|FULL|BUSY|LOCKED|AUTH|NOMEM).*)$/.test(code);
}

function damaged(folder: LibraryFolder, cause: unknown): ProblemError {
  return new ProblemError('library-damaged', 'libraryDamaged', { folder: folder.root }, { cause });
}

/** What a look over the whole database found. */
export type Soundness = {
  /** One sentence a finding; empty when the database is sound. */
  readonly findings: readonly string[];
  readonly clips: number;
  readonly sessions: number;
  /** Footage whose file the library should hold. */
  readonly footage: readonly FootageRow[];
};

/** Checks the file's structure, that no row lacks its owner, and that every row is as the app wrote it. */
export function verifyDatabase(reading: Reading): Soundness {
  const changed = new Set(listDiffering(reading).map(({ table }) => table));
  const orphans = all<{ table: string }>(reading, 'PRAGMA foreign_key_check').map((row) => row.table);
  return {
    findings: [
      ...checkStructure(reading).map((finding) => `The database is damaged: ${finding}.`),
      ...[...new Set(orphans)].map((table) => `Rows of "${table}" have lost what they belong to.`),
      ...[...changed].map((table) => `Rows of "${table}" are not as Rackside wrote them.`),
    ],
    clips: count(reading, 'clip'),
    sessions: count(reading, 'session'),
    footage: all<FootageRow>(reading, 'SELECT * FROM footage WHERE file IS NOT NULL ORDER BY file'),
  };
}

function count(reading: Reading, table: 'clip' | 'session'): number {
  return first<{ n: number }>(reading, `SELECT count(*) AS n FROM ${table}`)?.n ?? 0;
}

/** Compares every clip's file with what the library knows of it; one sentence a finding. */
export async function verifyFiles(folder: LibraryFolder, footage: readonly FootageRow[]): Promise<string[]> {
  const findings: string[] = [];
  for (const row of footage) {
    if (row.file === null) continue;
    const finding = await judgeFile(path.join(folder.clips, row.file), row);
    if (finding) findings.push(finding);
  }
  return findings;
}

async function judgeFile(file: string, row: FootageRow): Promise<string | null> {
  const found = await stat(file).catch(() => undefined);
  const name = `clips/${row.file}`;
  if (!found?.isFile()) return `The file "${name}" is missing.`;
  if (found.size !== row.size_bytes) return `The file "${name}" is not as long as it was when it came in.`;
  if ((await hashFile(file)) !== row.sha256) return `The file "${name}" has other content than when it came in.`;
  return null;
}
