import { stat } from 'node:fs/promises';
import path from 'node:path';
import { hashFile } from '../files/hashing.ts';
import { all, first, type Reading } from './connection.ts';
import type { LibraryFolder } from './folder.ts';
import type { FootageRow } from './footage.ts';
import { quickCheck } from './inspect.ts';

/** What a look over the whole database found. */
export type Soundness = {
  /** One sentence a finding; empty when the database is sound. */
  readonly findings: readonly string[];
  readonly clips: number;
  readonly sessions: number;
  /** Footage whose file the library should hold. */
  readonly footage: readonly FootageRow[];
};

/** Checks the file's structure and that no row lacks its owner. */
export function verifyDatabase(reading: Reading): Soundness {
  const orphans = all<{ table: string }>(reading, 'PRAGMA foreign_key_check').map((row) => row.table);
  return {
    findings: [
      ...quickCheck(reading).map((finding) => `The database is damaged: ${finding}.`),
      ...[...new Set(orphans)].map((table) => `Rows of "${table}" have lost what they belong to.`),
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
