import { all, first, type Reading, run, type Writing } from './connection.ts';

/** The speed of a clip's fastest rep as it is kept: from what it was made, and null where none is measured in metres. */
export type KeptSpeed = { readonly madeFrom: string; readonly fastestMps: number | null };

/** What is kept of a clip's speed. */
export function findKeptSpeed(reading: Reading, clipId: string): KeptSpeed | undefined {
  const sql = 'SELECT made_from AS madeFrom, fastest_mps AS fastestMps FROM clip_speed WHERE clip_id = ?';
  return first<KeptSpeed>(reading, sql, clipId);
}

/** Keeps a clip's speed; derived data, so it is no act. */
export function keepSpeed(writing: Writing, clipId: string, { madeFrom, fastestMps }: KeptSpeed): void {
  const sql = 'INSERT OR REPLACE INTO clip_speed (clip_id, made_from, fastest_mps) VALUES (?, ?, ?)';
  run(writing, sql, clipId, madeFrom, fastestMps);
}

/** A recorded set with its load. */
export type LoadedClip = {
  readonly sessionId: string;
  readonly date: string;
  readonly clipId: string;
  readonly exercise: string;
  readonly loadKg: number;
};

/**
 * A trainee's recorded clips of exercises done with two loads or more, the oldest first; second looks and what others
 * judged are left out. A clip without a load of its own has that of its plan.
 */
export function listLoadedClips(reading: Reading, traineeId: string): LoadedClip[] {
  return all<LoadedClip>(
    reading,
    `WITH loaded AS (
       SELECT session.id AS sessionId, session.date, session.created_at, clip.id AS clipId, entry.exercise,
         coalesce(clip.load_kg, entry.plan_load_kg) AS loadKg, entry.ordinal AS entryOrdinal, clip.ordinal
       FROM session JOIN entry ON entry.session_id = session.id JOIN clip ON clip.entry_id = entry.id
       WHERE session.trainee_id = ? AND session.second_look_of IS NULL AND session.read_only = 0
         AND coalesce(clip.load_kg, entry.plan_load_kg) > 0
         AND EXISTS (SELECT 1 FROM recording WHERE recording.footage_id = clip.footage_id)
     )
     SELECT sessionId, date, clipId, exercise, loadKg FROM loaded
     WHERE exercise IN (SELECT exercise FROM loaded GROUP BY exercise HAVING count(DISTINCT loadKg) > 1)
     ORDER BY date, created_at, sessionId, entryOrdinal, ordinal`,
    traineeId,
  );
}
