import { first, type Reading, run, type Writing } from './connection.ts';

/** Where the coach was in a session. */
export type Place = { readonly clipId: string; readonly frame: number };

/** The remembered place of a session, or null. */
export function readPlace(reading: Reading, sessionId: string): Place | null {
  const sql = 'SELECT clip_id AS clipId, frame FROM place WHERE session_id = ?';
  return first<Place>(reading, sql, sessionId) ?? null;
}

/** Remembers a place; a view, so it is no act and keeps what redo could bring back. */
export function writePlace(writing: Writing, sessionId: string, place: Place): void {
  const sql = 'INSERT OR REPLACE INTO place (session_id, clip_id, frame) VALUES (?, ?, ?)';
  run(writing, sql, sessionId, place.clipId, place.frame);
}
