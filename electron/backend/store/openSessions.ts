import type { OpenSession } from '../../../engine/arrival/arrival.ts';
import { listClips } from './clips.ts';
import { all, first, type Reading } from './connection.ts';
import { listEntries, planOf } from './entries.ts';

/** A session that clips may come into: neither a second look, nor one that is only read or in the bin. */
export type SessionLine = {
  readonly id: string;
  readonly traineeId: string;
  readonly date: string;
  readonly title: string;
};

const columns = 'id, trainee_id AS traineeId, date, title';
const isOpen = 'second_look_of IS NULL AND read_only = 0 AND removed_at IS NULL';

/** One session that clips may come into, or undefined. */
export function findOpenSession(reading: Reading, sessionId: string): SessionLine | undefined {
  return first<SessionLine>(reading, `SELECT ${columns} FROM session WHERE id = ? AND ${isOpen}`, sessionId);
}

/** The sessions of a day, the latest first. */
export function openSessionsOn(reading: Reading, date: string): SessionLine[] {
  const sql = `SELECT ${columns} FROM session WHERE date = ? AND ${isOpen} ORDER BY created_at DESC, id`;
  return all<SessionLine>(reading, sql, date);
}

/** The last sessions of a trainee, the newest day first. */
export function latestSessionsOf(reading: Reading, traineeId: string): SessionLine[] {
  const sql = `SELECT ${columns} FROM session WHERE trainee_id = ? AND ${isOpen}
    ORDER BY date DESC, created_at DESC, id LIMIT 12`;
  return all<SessionLine>(reading, sql, traineeId);
}

/** A session with its exercises: how many sets were planned of each, and how many clips there are. */
export function openSessionWhole(reading: Reading, { id, traineeId, date }: SessionLine): OpenSession {
  const entries = listEntries(reading, id).map((row) => ({
    exercise: row.exercise,
    plannedSets: planOf(row)?.sets.length ?? null,
    clips: listClips(reading, row.id).length,
  }));
  return { id, traineeId, date, entries };
}
