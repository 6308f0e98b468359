import { all, first, type Reading, run, type Writing } from './connection.ts';

/** How many acts of a session stand that changed something, and the newest of them. The same again: the session is as it was. */
export type Standing = { readonly standingActs: number; readonly newestAct: number };

const itsStanding = `SELECT count(*) AS standingActs, coalesce(max(act.id), 0) AS newestAct FROM act
  WHERE (act.session_id = ? OR act.id IN (SELECT act_id FROM act_also WHERE session_id = ?)) AND act.state = 'done'
    AND EXISTS (SELECT 1 FROM act_change WHERE act_change.act_id = act.id)`;

/** How a session stands now. */
export function readStanding(reading: Reading, sessionId: string): Standing {
  return first<Standing>(reading, itsStanding, sessionId, sessionId) ?? { standingActs: 0, newestAct: 0 };
}

/** Notes that a session was sent as it stood; the summary has to be derived anew after that. */
export function writeSent(writing: Writing, sessionId: string, sentAt: string, stood: Standing): void {
  run(
    writing,
    'INSERT OR REPLACE INTO session_sent (session_id, sent_at, standing_acts, newest_act) VALUES (?, ?, ?, ?)',
    sessionId,
    sentAt,
    stood.standingActs,
    stood.newestAct,
  );
}

/** Whether a session was ever sent, and whether it is still as it was then. */
export function readSent(reading: Reading, sessionId: string): 'never' | 'asItIs' | 'changedSince' {
  const sql = 'SELECT standing_acts AS standingActs, newest_act AS newestAct FROM session_sent WHERE session_id = ?';
  const stood = first<Standing>(reading, sql, sessionId);
  if (stood === undefined) return 'never';
  const stands = readStanding(reading, sessionId);
  return stood.standingActs === stands.standingActs && stood.newestAct === stands.newestAct ? 'asItIs' : 'changedSince';
}

/** When the first clip came into a session; '' where it has none. */
export function readCameAt(reading: Reading, sessionId: string): string {
  const sql = `SELECT act.at FROM act JOIN act_change ON act_change.act_id = act.id
    WHERE act.session_id = ? AND act.state = 'done' AND act_change.table_name = 'clip' AND act_change.before IS NULL
    ORDER BY act.id LIMIT 1`;
  const brought = first<{ at: string }>(reading, sql, sessionId)?.at;
  const created = 'SELECT created_at AS at FROM session WHERE id = ?';
  return brought ?? first<{ at: string }>(reading, created, sessionId)?.at ?? '';
}

/** How many clips of a session show footage that was measured. */
export function countMeasuredClips(reading: Reading, sessionId: string): number {
  const sql = `SELECT count(*) AS clips FROM entry JOIN clip ON clip.entry_id = entry.id
    WHERE entry.session_id = ? AND clip.removed_at IS NULL AND entry.removed_at IS NULL
      AND EXISTS (SELECT 1 FROM recording WHERE recording.footage_id = clip.footage_id AND recording.what = 'joints')`;
  return first<{ clips: number }>(reading, sql, sessionId)?.clips ?? 0;
}

/** One act, as the pace is told from it; `clip_id`: the clip that it judged, if any. */
export type RecentAct = { readonly at: string; readonly name: string; readonly clip_id: string | null };

/** The newest acts of the library, at most some. */
export function listRecentActs(reading: Reading, most: number): RecentAct[] {
  const sql = `SELECT act.at, act.name, (
      SELECT json_extract(coalesce(act_change.after, act_change.before), '$.clip_id') FROM act_change
      WHERE act_change.act_id = act.id AND act_change.table_name IN ('flag', 'tick') LIMIT 1
    ) AS clip_id
    FROM act WHERE act.id > (SELECT coalesce(max(id), 0) FROM act) - ?`;
  return all<RecentAct>(reading, sql, most);
}

/** A session that is due: when its first clip came, and about how many of its clips have to be judged. */
export type DueRow = { readonly session_id: string; readonly came_at: string; readonly clips_left: number };

/** The sessions somebody waits for, what came first first, at most some. */
export function listDue(reading: Reading, most: number): DueRow[] {
  const sql = `SELECT session_id, came_at, clips_left FROM session_summary INDEXED BY session_summary_due
    WHERE due > 0 AND due = 1 ORDER BY came_at, session_id LIMIT ?`;
  return all<DueRow>(reading, sql, most);
}

type DueKey = readonly [due: number, cameAt: string, sessionId: string];

/** The session that is due after another one, and from the start again after the last; undefined where no other is. */
export function findNextDue(reading: Reading, after: string | null): string | undefined {
  const sql = `SELECT session_id AS id FROM session_summary INDEXED BY session_summary_due
    WHERE due > 0 AND (due, came_at, session_id) > (?, ?, ?) ORDER BY due, came_at, session_id LIMIT 2`;
  const from = (key: DueKey): string | undefined =>
    all<{ id: string }>(reading, sql, ...key).find(({ id }) => id !== after)?.id;
  const start: DueKey = [0, '', ''];
  if (after === null) return from(start);
  return from(keyOf(reading, after) ?? start) ?? from(start);
}

/** Where a session stands among those due, or stood before it was sent. */
function keyOf(reading: Reading, sessionId: string): DueKey | undefined {
  const sql = 'SELECT max(due, 1) AS due, came_at FROM session_summary WHERE session_id = ?';
  const row = first<{ due: number; came_at: string }>(reading, sql, sessionId);
  return row && [row.due, row.came_at, sessionId];
}

/** Whether the joints in footage were looked for. */
export function isMeasured(reading: Reading, footageId: string): boolean {
  const sql = "SELECT 1 AS there FROM recording WHERE footage_id = ? AND what = 'joints' LIMIT 1";
  return first<{ there: number }>(reading, sql, footageId) !== undefined;
}

/** A session among all by day: its day, when it was made, and its id. */
export type SessionKey = readonly [date: string, createdAt: string, sessionId: string];

const unmeasuredAtOnce = 20;

/** Sessions with clips that are not measured, the newest day first, those after a key; at most some. */
export function listUnmeasuredSessions(reading: Reading, after: SessionKey | null): SessionKey[] {
  const sql = `SELECT date, created_at, session_id FROM session_summary INDEXED BY session_summary_unmeasured
    WHERE measured < clips AND (date, created_at, session_id) < (?, ?, ?)
    ORDER BY date DESC, created_at DESC, session_id DESC LIMIT ?`;
  const key = after ?? ['~', '~', '~'];
  const rows = all<{ date: string; created_at: string; session_id: string }>(reading, sql, ...key, unmeasuredAtOnce);
  return rows.map((row) => [row.date, row.created_at, row.session_id]);
}
