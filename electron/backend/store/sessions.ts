import { ProblemError } from '../../contract/reply.ts';
import type { Voice } from '../../contract/requests.ts';
import { all, first, type Reading } from './connection.ts';
import type { Row } from './journaledTables.ts';

export type SessionRow = Row & {
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
};

/** One session. Throws `not-found`. */
export function findSession(reading: Reading, sessionId: string): SessionRow {
  const session = first<SessionRow>(reading, 'SELECT * FROM session WHERE id = ?', sessionId);
  if (!session) throw new ProblemError('not-found', 'This session is not in the library; nothing was changed.');
  return session;
}

/** Every session, the newest day first. */
export function listSessions(reading: Reading): SessionRow[] {
  return all<SessionRow>(reading, 'SELECT * FROM session ORDER BY date DESC, created_at DESC, id');
}
