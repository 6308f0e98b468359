import { stat } from 'node:fs/promises';
import path from 'node:path';
import { hashFile } from '../files/hashFile.ts';
import type { LibraryFolder } from './folder.ts';
import type { FootageRow } from './footage.ts';

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
