import * as v from 'valibot';
import { type Choice, choiceSchema } from '../../../engine/arrival/arrival.ts';
import type { View } from '../../../engine/exercises/exercise.ts';
import { ProblemError } from '../../contract/reply.ts';
import { lastKept } from './bin.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';

/** A file that came in. */
export type ArrivalRow = {
  readonly id: string;
  readonly batch_id: string;
  readonly path: string;
  /** JSON: the folders it lay in, the innermost last. */
  readonly folders: string;
  readonly size_bytes: number;
  readonly modified_ms: number;
  readonly state: 'waiting' | 'read' | 'failed';
  /** Why it could not be read; '' where it was. */
  readonly message: string;
  readonly footage_id: string | null;
  readonly recorded_at: string;
  readonly recorded_day: string;
  readonly recorded_by: 'film' | 'file';
  readonly seen_from: View | null;
  /** JSON of a `Choice`. */
  readonly choice: string;
};

const columns = `id, batch_id, path, folders, size_bytes, modified_ms, state, message, footage_id, recorded_at, recorded_day,
  recorded_by, seen_from, choice`;
const inInbox = 'placed = 0 AND removed_at IS NULL';

/** What lies in the inbox, in the order it came in, as far as anybody can look through. */
export function listInbox(reading: Reading, most: number): ArrivalRow[] {
  return all<ArrivalRow>(reading, `SELECT ${columns} FROM arrival WHERE ${inInbox} ORDER BY number LIMIT ?`, most);
}

/** How many files lie in the inbox. */
export function countInbox(reading: Reading): number {
  return first<{ files: number }>(reading, `SELECT count(*) AS files FROM arrival WHERE ${inInbox}`)?.files ?? 0;
}

/** A file of the inbox. Throws `not-found` for one that isn't there any more. */
export function findArrival(reading: Reading, arrivalId: string): ArrivalRow {
  const row = first<ArrivalRow>(reading, `SELECT ${columns} FROM arrival WHERE id = ? AND ${inInbox}`, arrivalId);
  if (!row) throw new ProblemError('not-found', 'arrivalGone');
  return row;
}

/** The next file of a batch that has not been read, or undefined. */
export function nextToRead(reading: Reading, batchId: string): ArrivalRow | undefined {
  return first<ArrivalRow>(
    reading,
    `SELECT ${columns} FROM arrival WHERE batch_id = ? AND state = 'waiting' AND ${inInbox} ORDER BY number LIMIT 1`,
    batchId,
  );
}

/** How large the files of a batch are together: all, and those that have not been read. */
export function sizeOfBatch(
  reading: Reading,
  batchId: string,
): { readonly allBytes: number; readonly leftBytes: number } {
  const sql = `SELECT coalesce(sum(size_bytes), 0) AS allBytes,
      coalesce(sum(CASE WHEN state = 'waiting' THEN size_bytes END), 0) AS leftBytes
    FROM arrival WHERE batch_id = ? AND ${inInbox}`;
  return first<{ allBytes: number; leftBytes: number }>(reading, sql, batchId) ?? { allBytes: 0, leftBytes: 0 };
}

/** Whether this file, as it is now, came in before: lies in the inbox, or whatever became of it. */
export function cameBefore(
  reading: Reading,
  { path, sizeBytes, modifiedMs }: { readonly path: string; readonly sizeBytes: number; readonly modifiedMs: number },
  where: 'inbox' | 'everywhere',
): boolean {
  const sql = `SELECT 1 FROM arrival WHERE path = ? AND size_bytes = ? AND modified_ms = ?
    ${where === 'inbox' ? `AND ${inInbox}` : ''} LIMIT 1`;
  return first(reading, sql, path, sizeBytes, modifiedMs) !== undefined;
}

/** Adds a file that came in and is to be read. */
export function insertArrival(
  writing: Writing,
  row: Omit<ArrivalRow, 'state' | 'message' | 'footage_id' | 'seen_from' | 'choice' | 'recorded_by'>,
): void {
  run(
    writing,
    `INSERT INTO arrival (id, batch_id, path, folders, size_bytes, modified_ms, state, message, recorded_at, recorded_day,
       recorded_by, choice, arrived_at)
     VALUES (?, ?, ?, ?, ?, ?, 'waiting', '', ?, ?, 'file', '{}', ?)`,
    ...[row.id, row.batch_id, row.path, row.folders, row.size_bytes, row.modified_ms],
    ...[row.recorded_at, row.recorded_day, new Date().toISOString()],
  );
}

/** What was found out about a file that came in. */
export type ArrivalFacts = Pick<ArrivalRow, 'recorded_at' | 'recorded_day' | 'recorded_by' | 'seen_from'> & {
  readonly footage_id: string;
};

/** Notes that a file was read. */
export function setRead(writing: Writing, arrivalId: string, facts: ArrivalFacts): void {
  run(
    writing,
    `UPDATE arrival SET state = 'read', message = '', footage_id = ?, recorded_at = ?, recorded_day = ?, recorded_by = ?,
       seen_from = ? WHERE id = ?`,
    ...[facts.footage_id, facts.recorded_at, facts.recorded_day, facts.recorded_by, facts.seen_from, arrivalId],
  );
}

/** Notes why a file could not be read. */
export function setUnreadable(writing: Writing, arrivalId: string, message: string): void {
  run(writing, "UPDATE arrival SET state = 'failed', message = ? WHERE id = ?", message, arrivalId);
}

/** A file that could not be read gives way to what it has become since. */
export function forgetUnreadable(writing: Writing, path: string): void {
  run(writing, `DELETE FROM arrival WHERE path = ? AND state = 'failed' AND ${inInbox}`, path);
}

/** Has a file that was not read taken up again, in another batch. */
export function readAgain(writing: Writing, arrivalId: string, batchId: string): void {
  run(writing, "UPDATE arrival SET state = 'waiting', message = '', batch_id = ? WHERE id = ?", batchId, arrivalId);
}

/** What a person said of a file; what is stored and can't be understood counts as not said. */
export function choiceOf({ choice }: Pick<ArrivalRow, 'choice'>): Choice {
  const parsed = v.safeParse(choiceSchema, JSON.parse(choice));
  return parsed.success ? parsed.output : {};
}

/** Keeps what a person said of a file. */
export function setChoice(writing: Writing, arrivalId: string, choice: Choice): void {
  run(writing, 'UPDATE arrival SET choice = ? WHERE id = ?', JSON.stringify(choice), arrivalId);
}

/** Takes a file out of the inbox, or puts it back. */
export function setRemoved(writing: Writing, arrivalId: string, removed: boolean): void {
  run(writing, 'UPDATE arrival SET removed_at = ? WHERE id = ?', removed ? new Date().toISOString() : null, arrivalId);
}

/** A file that was removed from the inbox and can be put back. */
export type RemovedArrival = { readonly id: string; readonly path: string; readonly removed_at: string };

const isRemoved = 'removed_at IS NOT NULL AND placed = 0 AND footage_id IS NOT NULL';

/** The files that were removed from the inbox and whose films the library still holds, the last removed first. */
export function listRemovedArrivals(reading: Reading): RemovedArrival[] {
  const sql = `SELECT id, path, removed_at FROM arrival WHERE ${isRemoved} ORDER BY removed_at DESC`;
  return all<RemovedArrival>(reading, sql);
}

/** The files that were removed from the inbox for longer than the bin keeps anything. */
export function listOverdueArrivals(reading: Reading, now: Date): string[] {
  const sql = `SELECT id FROM arrival WHERE ${isRemoved} AND removed_at <= ?`;
  return all<{ id: string }>(reading, sql, lastKept(now)).map(({ id }) => id);
}

/** The film of a file that came in, or null. */
export const footageOfArrival = (reading: Reading, arrivalId: string): string | null =>
  first<{ footage_id: string | null }>(reading, 'SELECT footage_id FROM arrival WHERE id = ?', arrivalId)?.footage_id ??
  null;

/** Forgets a file that came in but for where it lay: the watched folder doesn't bring it in by itself again. */
export function forgetArrival(writing: Writing, arrivalId: string): void {
  run(
    writing,
    `UPDATE arrival SET footage_id = NULL, session_id = NULL, clip_id = NULL, placed = 0, state = 'waiting', choice = '{}',
       removed_at = coalesce(removed_at, ?) WHERE id = ?`,
    new Date().toISOString(),
    arrivalId,
  );
}

/** How much room the films of the inbox take that no clip shows, in bytes. */
export function bytesOfInbox(reading: Reading): number {
  const sql = `SELECT coalesce(sum(size_bytes), 0) AS bytes FROM footage WHERE file IS NOT NULL
    AND id IN (SELECT footage_id FROM arrival WHERE ${inInbox} AND footage_id IS NOT NULL)
    AND NOT EXISTS (SELECT 1 FROM clip WHERE clip.footage_id = footage.id)`;
  return first<{ bytes: number }>(reading, sql)?.bytes ?? 0;
}

/** Notes the clip that a file became. */
export function setPlaced(
  writing: Writing,
  arrivalId: string,
  { sessionId, clipId }: { readonly sessionId: string; readonly clipId: string },
): void {
  run(writing, 'UPDATE arrival SET session_id = ?, clip_id = ?, placed = 1 WHERE id = ?', sessionId, clipId, arrivalId);
}

/** After an act on a session, an undo or a redo: what came into it and is gone again lies in the inbox. */
export function placeAnew(writing: Writing, sessionId: string): void {
  run(
    writing,
    'UPDATE arrival SET placed = EXISTS (SELECT 1 FROM clip WHERE clip.id = arrival.clip_id) WHERE session_id = ?',
    sessionId,
  );
}

/** The trainee whose session was worked on last, or null. */
export function traineeWorkedOnLast(reading: Reading): string | null {
  const sql = `SELECT session.trainee_id AS id FROM act JOIN session ON session.id = act.session_id
    WHERE act.id > 0 ORDER BY act.id DESC LIMIT 1`;
  return first<{ id: string }>(reading, sql)?.id ?? null;
}
