import type { Context } from '../context/context.ts';
import { judgeKept } from '../handover/package/handoverZip.ts';
import { numberPragma } from '../store/connection.ts';
import { listAllHandovers } from '../store/handovers.ts';
import { verifyDatabase, verifyFiles } from '../store/inspect.ts';
import { verifySounds } from '../store/narrations.ts';
import { verifySummaries } from '../summaries/freshSummary.ts';

export type Verified = {
  /** One sentence a finding; empty when the library is sound. Files are named as the library names them. */
  readonly findings: readonly string[];
  readonly clips: number;
  readonly sessions: number;
  readonly databaseVersion: number;
};

/** Checks everything that a library holds: the database, the summaries, every clip's file, every narration's sound, every kept handover. */
export async function verifyLibrary(context: Context): Promise<Verified> {
  const library = context.library();
  const { findings, clips, sessions, footage } = verifyDatabase(library.reading);
  const kept: string[] = [];
  for (const row of listAllHandovers(library.reading)) {
    const trouble = await judgeKept(library.folder, row);
    const name = `handovers/${row.file}`;
    if (trouble === 'missing') kept.push(`The file "${name}" is missing.`);
    if (trouble === 'changed') kept.push(`The file "${name}" is no longer what was handed over.`);
  }
  return {
    findings: [
      ...findings,
      ...verifySummaries(library, context),
      ...(await verifyFiles(library.folder, footage)),
      ...(await verifySounds(library)),
      ...kept,
    ],
    clips,
    sessions,
    databaseVersion: numberPragma(library.reading, 'user_version'),
  };
}
