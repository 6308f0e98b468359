import { all, type Reading } from './connection.ts';

/** Where the library shows the same film already. */
export type Twin = {
  readonly sessionId: string;
  readonly traineeName: string;
  readonly date: string;
  readonly exercise: string;
};

/**
 * The sessions' clips of some footage, the newest day first; second looks show what their first session does, and what is in
 * the bin is shown nowhere.
 */
export function listTwins(reading: Reading, footageId: string): Twin[] {
  return all<Twin>(
    reading,
    `SELECT session.id AS sessionId, trainee.name AS traineeName, session.date, entry.exercise
     FROM clip JOIN entry ON entry.id = clip.entry_id JOIN session ON session.id = entry.session_id
     JOIN trainee ON trainee.id = session.trainee_id
     WHERE clip.footage_id = ? AND session.second_look_of IS NULL
       AND clip.removed_at IS NULL AND entry.removed_at IS NULL AND session.removed_at IS NULL
     ORDER BY session.date DESC, session.id, entry.ordinal`,
    footageId,
  );
}
