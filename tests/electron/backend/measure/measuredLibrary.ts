import path from 'node:path';
import Database from 'better-sqlite3';
import { currentMethods } from '../../../../electron/backend/measure/methods.ts';
import { openLibrary } from '../../../../electron/backend/store/library.ts';
import { writeRecordedParts } from '../../../../electron/backend/store/recordings.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { Click } from '../../../../engine/recording/setUp.ts';
import type { Warning } from '../../../../engine/recording/warnings.ts';
import { appFolder, ask, backendOn, jobEnd, preparedLibrary } from '../workbench.ts';
import { knownDisc } from './knownRecording.ts';

/** A library with the squat clip in it, whose disc was recorded already; open, nothing measured yet. */
export async function recordedLibrary(clicks: readonly Click[] = []) {
  const prepared = await preparedLibrary();
  keepDisc(prepared.folder, []);
  if (clicks.length > 0) keepDisc(prepared.folder, clicks);
  return { ...prepared, backend: backendOn(prepared.folder) };
}

/** The same, measured, where the second of the three reps goes four tenths as deep: it is offered and not counted. */
export async function offeringLibrary() {
  const prepared = await preparedLibrary();
  keepDisc(prepared.folder, [], [1, 0.4, 1]);
  return measured({ ...prepared, backend: backendOn(prepared.folder) });
}

/** The same as a recorded one, measured: its reps are marked by the measure. */
export async function measuredLibrary(clicks: readonly Click[] = []) {
  return measured(await recordedLibrary(clicks));
}

async function measured<L extends { readonly backend: Backend; readonly clipId: string }>(library: L): Promise<L> {
  const { jobIds } = await ask(library.backend, 'measures.start', { clipIds: [library.clipId], joints: false });
  const job = await jobEnd(library.backend, jobIds[0] ?? '');
  if (job.state !== 'done') throw new Error(`Measuring failed: ${JSON.stringify(job.message)}`);
  return library;
}

/** Keeps the squat clip's disc under clicks, in a library that is not open; `depthShares` makes reps less deep. */
export function keepDisc(folder: string, clicks: readonly Click[], depthShares: readonly number[] = []): void {
  const library = openLibrary(folder, appFolder);
  if (!library) throw new Error('There is no library.');
  const footageId = footageIdIn(folder);
  const method = currentMethods.disc;
  const disc = { method, found: knownDisc(method, depthShares), warnings: [] };
  writeRecordedParts(library.writing, footageId, clicks, { disc });
  library.close();
}

/** Keeps, under clicks, that nobody's joints were found and why, in a library that is not open. */
export function keepJoints(folder: string, clicks: readonly Click[], warnings: readonly Warning[]): void {
  const library = openLibrary(folder, appFolder);
  if (!library) throw new Error('There is no library.');
  const joints = { method: currentMethods.joints, found: null, warnings };
  writeRecordedParts(library.writing, footageIdIn(folder), clicks, { joints });
  library.close();
}

/** How often footage was recorded, part by part. */
export function recordingsIn(folder: string): { what: string; method: string }[] {
  return query(folder, 'SELECT what, method FROM recording ORDER BY what, recorded_at') as {
    what: string;
    method: string;
  }[];
}

function footageIdIn(folder: string): string {
  const [row] = query(folder, 'SELECT id FROM footage') as { id: string }[];
  if (!row) throw new Error('There is no footage.');
  return row.id;
}

function query(folder: string, sql: string): unknown[] {
  const database = new Database(path.join(folder, 'rackside.sqlite'), { readonly: true });
  try {
    return database.prepare(sql).all();
  } finally {
    database.close();
  }
}
