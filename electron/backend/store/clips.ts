import type { View } from '../../../engine/exercises/exercise.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Row } from './changes.ts';
import { all, first, type Reading } from './connection.ts';

export type ClipRow = Row & {
  readonly id: string;
  readonly entry_id: string;
  readonly footage_id: string | null;
  readonly ordinal: number;
  readonly name: string;
  readonly view: View | null;
  readonly real_time_factor: number;
  readonly load_kg: number | null;
};

/** Where a clip belongs. */
export type ClipHome = ClipRow & { readonly session_id: string; readonly exercise: string };

/** A clip with its session and exercise. Throws `not-found`. */
export function findClip(reading: Reading, clipId: string): ClipHome {
  const clip = first<ClipHome>(
    reading,
    `SELECT clip.*, entry.session_id, entry.exercise FROM clip JOIN entry ON entry.id = clip.entry_id
      WHERE clip.id = ?`,
    clipId,
  );
  if (!clip) throw new ProblemError('not-found', 'This clip is no longer in the library; nothing was changed.');
  return clip;
}

/** A clip with the day and the session it is of. */
export type AlikeClip = {
  readonly clip_id: string;
  readonly session_id: string;
  readonly date: string;
  readonly name: string;
  readonly exercise: string;
};

/** Clips of the same trainee and exercise, the newest session first; second looks are left out. */
export function listClipsAlike(reading: Reading, clipId: string): AlikeClip[] {
  return all<AlikeClip>(
    reading,
    `SELECT clip.id AS clip_id, session.id AS session_id, session.date, clip.name, entry.exercise
     FROM clip JOIN entry ON entry.id = clip.entry_id JOIN session ON session.id = entry.session_id
     WHERE session.second_look_of IS NULL
       AND (session.trainee_id, entry.exercise) IN (
         SELECT s.trainee_id, e.exercise FROM clip c JOIN entry e ON e.id = c.entry_id
         JOIN session s ON s.id = e.session_id WHERE c.id = ?)
     ORDER BY session.date DESC, session.created_at DESC, entry.ordinal, clip.ordinal, clip.id`,
    clipId,
  );
}

/** An entry's clips, in order. */
export function listClips(reading: Reading, entryId: string): ClipRow[] {
  return all<ClipRow>(reading, 'SELECT * FROM clip WHERE entry_id = ? ORDER BY ordinal, id', entryId);
}

/** The place in line for an entry's next clip. */
export function nextClipOrdinal(reading: Reading, entryId: string): number {
  const sql = 'SELECT coalesce(max(ordinal), 0) + 1 AS next FROM clip WHERE entry_id = ?';
  return first<{ next: number }>(reading, sql, entryId)?.next ?? 1;
}
