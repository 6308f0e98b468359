import type { Language } from '../../../engine/language/language.ts';
import type { LetterStyle, Tone } from '../../../engine/letter/letter.ts';
import type { Voice } from '../../contract/library.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Row } from './changes.ts';
import type { EquipmentColumn, OverrideColumns } from './columns.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';

export type SessionRow = Row &
  EquipmentColumn &
  OverrideColumns & {
    readonly id: string;
    readonly trainee_id: string;
    readonly title: string;
    readonly date: string;
    readonly notes: string;
    readonly pain_note: string;
    /** Null = as the library has it. */
    readonly voice: Voice | null;
    readonly coach: string | null;
    readonly created_at: string;
    /** The version of the rubric it is judged by. */
    readonly rubric_version: number;
    /** The session it judges again, blind; null for a session of its own. */
    readonly second_look_of: string | null;
    readonly letter_language: Language;
    readonly letter_length: LetterStyle['length'];
    readonly letter_tone: Tone;
    /** 1 = it came from another coach's Rackside, and no act changes it. */
    readonly read_only: number;
    /** When it went into the bin; null = it is in use. */
    readonly removed_at: string | null;
    /** When it was said to be finished without a letter; null = it is not. */
    readonly finished_at: string | null;
  };

/** One session that is in use. Throws `not-found`, also for one in the bin. */
export function findSession(reading: Reading, sessionId: string): SessionRow {
  const session = findSessionAnywhere(reading, sessionId);
  if (session.removed_at !== null) throw new ProblemError('not-found', 'sessionGone');
  return session;
}

/** One session, be it in the bin. Throws `not-found`. */
export function findSessionAnywhere(reading: Reading, sessionId: string): SessionRow {
  const session = first<SessionRow>(reading, 'SELECT * FROM session WHERE id = ?', sessionId);
  if (!session) throw new ProblemError('not-found', 'sessionGone');
  return session;
}

/** Whether a session came from another coach's Rackside, so that no act may change it. */
export function isReadOnly(reading: Reading, sessionId: string): boolean {
  return (
    first<{ read_only: number }>(reading, 'SELECT read_only FROM session WHERE id = ?', sessionId)?.read_only === 1
  );
}

/** Refuses what would change a session that is only read: `conflict`. A session that isn't there yet may come. */
export function assertWritable(reading: Reading, sessionId: string | null): void {
  if (sessionId === null || !isReadOnly(reading, sessionId)) return;
  throw new ProblemError('conflict', 'readOnlySession');
}

/** A trainee's sessions before one of them, oldest first; second looks and what others judged are left out. */
export function listSessionsBefore(reading: Reading, { id, trainee_id, date, created_at }: SessionRow): SessionRow[] {
  return all<SessionRow>(
    reading,
    `SELECT * FROM session
     WHERE trainee_id = ? AND id <> ? AND second_look_of IS NULL AND read_only = 0 AND removed_at IS NULL
       AND (date, created_at, id) < (?, ?, ?)
     ORDER BY date, created_at, id`,
    trainee_id,
    id,
    date,
    created_at,
    id,
  );
}

/** A trainee's sessions, oldest first; second looks and what others judged are left out. */
export function listSessionsOf(reading: Reading, traineeId: string): SessionRow[] {
  const sql = `SELECT * FROM session WHERE trainee_id = ? AND second_look_of IS NULL AND read_only = 0
    AND removed_at IS NULL ORDER BY date, created_at, id`;
  return all<SessionRow>(reading, sql, traineeId);
}

const mostPlaces = 100;

/** A trainee's own sessions that clips can be moved into, the newest first, at most a hundred. */
export function listPlaces(reading: Reading, traineeId: string): SessionRow[] {
  const sql = `SELECT * FROM session WHERE trainee_id = ? AND second_look_of IS NULL AND read_only = 0
    AND removed_at IS NULL ORDER BY date DESC, created_at DESC, id DESC LIMIT ?`;
  return all<SessionRow>(reading, sql, traineeId, mostPlaces);
}

/** The ids of every session of a trainee, those in the bin too. */
export function listSessionIdsOf(reading: Reading, traineeId: string): string[] {
  return all<{ id: string }>(reading, 'SELECT id FROM session WHERE trainee_id = ?', traineeId).map(({ id }) => id);
}

/** The newest second look at a session. */
export function findSecondLook(reading: Reading, sessionId: string): SessionRow | undefined {
  return listSecondLooks(reading, sessionId).find((look) => look.removed_at === null);
}

/** Every second look at a session, those in the bin too; the newest first. */
export function listSecondLooks(reading: Reading, sessionId: string): SessionRow[] {
  const sql = 'SELECT * FROM session WHERE second_look_of = ? ORDER BY created_at DESC, id';
  return all<SessionRow>(reading, sql, sessionId);
}

/** Removes a session with its exercises, jobs and history. Throws `conflict` when it holds a clip. */
export function removeEmptySession(writing: Writing, sessionId: string): void {
  const sql = 'SELECT count(*) AS clips FROM clip JOIN entry ON entry.id = clip.entry_id WHERE entry.session_id = ?';
  if ((first<{ clips: number }>(writing, sql, sessionId)?.clips ?? 0) > 0) {
    throw new ProblemError('conflict', 'sessionHasClips');
  }
  run(writing, 'DELETE FROM entry WHERE session_id = ?', sessionId);
  run(writing, 'DELETE FROM session WHERE id = ?', sessionId);
}

/** Where the coach was in a session. */
export type Position = { readonly clipId: string; readonly frame: number };

/** The position remembered for a session, or null. */
export function readPosition(reading: Reading, sessionId: string): Position | null {
  const sql = `SELECT place.clip_id AS clipId, place.frame FROM place JOIN clip ON clip.id = place.clip_id
    JOIN entry ON entry.id = clip.entry_id WHERE place.session_id = ? AND entry.session_id = place.session_id
    AND clip.removed_at IS NULL AND entry.removed_at IS NULL`;
  return first<Position>(reading, sql, sessionId) ?? null;
}

/** Remembers a position. That is a view change: no act, and redo stays possible. */
export function writePosition(writing: Writing, sessionId: string, position: Position): void {
  const sql = 'INSERT OR REPLACE INTO place (session_id, clip_id, frame) VALUES (?, ?, ?)';
  run(writing, sql, sessionId, position.clipId, position.frame);
}
