import { all, type Reading } from './connection.ts';

/** How long what was removed can be brought back. */
export const binDays = 30;

const dayMs = 24 * 60 * 60 * 1000;

/** What can lie in the bin; each is marked by its column `removed_at`. */
export type Binned = 'session' | 'entry' | 'clip';

/** Something in the bin, with what tells it from others. What lies in something else in the bin is told with that. */
export type BinRow = {
  readonly kind: Binned;
  readonly id: string;
  readonly session_id: string;
  readonly removed_at: string;
  readonly trainee_name: string;
  readonly title: string;
  readonly date: string;
  /** Null for a session. */
  readonly exercise: string | null;
  /** Null for all but a clip. */
  readonly clip_name: string | null;
  readonly clips: number;
  /** A clip to be recognised by. */
  readonly poster_clip_id: string | null;
};

const session = 'session.title, session.date, trainee.name AS trainee_name';
const itsTrainee = 'JOIN trainee ON trainee.id = session.trainee_id';
const clipsOf = (where: string): string =>
  `(SELECT count(*) FROM clip JOIN entry AS its ON its.id = clip.entry_id WHERE ${where}) AS clips,
   (SELECT clip.id FROM clip JOIN entry AS its ON its.id = clip.entry_id WHERE ${where}
    ORDER BY its.ordinal, clip.ordinal LIMIT 1) AS poster_clip_id`;

/** What lies in the bin, what was removed last first. */
export function listBin(reading: Reading): BinRow[] {
  const sessions = all<BinRow>(
    reading,
    `SELECT 'session' AS kind, session.id, session.id AS session_id, session.removed_at, ${session},
       NULL AS exercise, NULL AS clip_name, ${clipsOf('its.session_id = session.id')}
     FROM session ${itsTrainee} LEFT JOIN session AS first ON first.id = session.second_look_of
     WHERE session.removed_at > '' AND first.removed_at IS NULL`,
  );
  const entries = all<BinRow>(
    reading,
    `SELECT 'entry' AS kind, entry.id, session.id AS session_id, entry.removed_at, ${session},
       entry.exercise, NULL AS clip_name, ${clipsOf('its.id = entry.id')}
     FROM entry JOIN session ON session.id = entry.session_id ${itsTrainee}
     WHERE entry.removed_at > '' AND session.removed_at IS NULL`,
  );
  const clips = all<BinRow>(
    reading,
    `SELECT 'clip' AS kind, clip.id, session.id AS session_id, clip.removed_at, ${session},
       entry.exercise, clip.name AS clip_name, 1 AS clips, clip.id AS poster_clip_id
     FROM clip JOIN entry ON entry.id = clip.entry_id JOIN session ON session.id = entry.session_id ${itsTrainee}
     WHERE clip.removed_at > '' AND entry.removed_at IS NULL AND session.removed_at IS NULL`,
  );
  return [...sessions, ...entries, ...clips].sort((a, b) => b.removed_at.localeCompare(a.removed_at));
}

/** For how many days something stays in the bin; 0 = it goes when the library is next opened. */
export const daysLeftOf = (removedAt: string, now: Date): number =>
  Math.max(0, Math.ceil((Date.parse(removedAt) + binDays * dayMs - now.getTime()) / dayMs));

/** All that lies in the bin, also what lies in something else there: clips before their entries, those before their sessions. */
export const listInBin = (reading: Reading): { readonly kind: Binned; readonly id: string }[] =>
  listRemovedBefore(reading, '9999');

/** What has lain in the bin for longer than it stays there: clips before their entries, those before their sessions. */
export function listOverdue(reading: Reading, now: Date): { readonly kind: Binned; readonly id: string }[] {
  return listRemovedBefore(reading, lastKept(now));
}

/** What was removed before this instant goes; ISO time. */
export const lastKept = (now: Date): string => new Date(now.getTime() - binDays * dayMs).toISOString();

function listRemovedBefore(reading: Reading, before: string): { readonly kind: Binned; readonly id: string }[] {
  return (['clip', 'entry', 'session'] as const).flatMap((kind) =>
    all<{ id: string }>(
      reading,
      // A second look goes before the session that it looks at again.
      `SELECT id FROM ${kind} WHERE removed_at > '' AND removed_at <= ?
       ${kind === 'session' ? 'ORDER BY second_look_of IS NULL' : ''}`,
      before,
    ).map(({ id }) => ({ kind, id })),
  );
}
