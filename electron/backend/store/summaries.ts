import * as v from 'valibot';
import type { SessionState } from '../../../engine/night/sessionState.ts';
import type { SessionSummary } from '../../contract/desk.ts';
import { postersOf } from './clips.ts';
import { all, first, inTransaction, type Reading, run, type Writing } from './connection.ts';
import type { LibraryFolder } from './folder.ts';
import { agreesWithDigest, listDiffering, takeForSound } from './rowDigests.ts';

/** What is kept of a session's summary: derived from its rows, and from the judging data whose fingerprint it names. */
export type KeptSummary = {
  readonly exercises: readonly string[];
  readonly clips: number;
  readonly flags: number;
  /** '' without a grade; then there is no score. */
  readonly mark: string;
  readonly score: number | null;
  readonly provisional: boolean;
  readonly byHand: boolean;
  /** 0-1, mean over entries. */
  readonly coverage: number;
  readonly state: SessionState;
  /** When its first clip came; '' without clips. */
  readonly cameAt: string;
  /** How many of its clips have been measured. */
  readonly measured: number;
  /** About how many of its clips still have to be judged. */
  readonly clipsLeft: number;
  readonly judgingSha256: string;
};

type SummaryRow = {
  readonly id: string;
  readonly trainee_id: string;
  readonly trainee_name: string;
  readonly title: string;
  readonly date: string;
  readonly created_at: string;
  readonly second_look_of: string | null;
  readonly read_only: number;
  readonly rubric_version: number;
  readonly exercises: string;
  readonly clips: number;
  readonly flags: number;
  readonly mark: string;
  readonly score: number | null;
  readonly provisional: number;
  readonly by_hand: number;
  readonly coverage: number;
  readonly state: SessionState;
  readonly came_at: string;
  readonly measured: number;
  readonly clips_left: number;
  readonly due: number;
  readonly judging_sha256: string;
  readonly archived: number;
  readonly finished_at: string | null;
};

const columns = `session.id, session.trainee_id, trainee.name AS trainee_name, session.title, session.date,
  session.created_at, session.second_look_of, session.read_only, session.rubric_version, session_summary.exercises,
  session_summary.clips, session_summary.flags, session_summary.mark, session_summary.score, session_summary.provisional,
  session_summary.by_hand, session_summary.coverage, session_summary.state, session_summary.came_at, session_summary.measured,
  session_summary.clips_left, session_summary.due, session_summary.judging_sha256,
  session_summary.archived, session.finished_at`;
const itsSession = `CROSS JOIN session ON session.id = session_summary.session_id
  JOIN trainee ON trainee.id = session.trainee_id`;

/** Takes the summary of a session away that lies in the bin: it is on no list then. */
export function removeSummary(writing: Writing, sessionId: string): void {
  run(writing, 'DELETE FROM session_summary WHERE session_id = ?', sessionId);
}

/** The trainee under whom a session's summary is kept; undefined without one. */
export function traineeOfSummary(reading: Reading, sessionId: string): string | undefined {
  const sql = 'SELECT trainee_id FROM session_summary WHERE session_id = ?';
  return first<{ trainee_id: string }>(reading, sql, sessionId)?.trainee_id;
}

/** Writes a session's summary, from within the transaction that changed the session; what it would hand over is unknown then. */
export function writeSummary(writing: Writing, sessionId: string, kept: KeptSummary): void {
  run(
    writing,
    `INSERT OR REPLACE INTO session_summary (session_id, trainee_id, date, created_at, second_look, read_only, exercises,
         clips, flags, mark, score, provisional, by_hand, coverage, unfinished, last_act, rubric_version, judging_sha256,
         content_sha256, state, came_at, measured, clips_left, due, archived)
       SELECT session.id, trainee_id, date, session.created_at, second_look_of IS NOT NULL, read_only,
         ?, ?, ?, ?, ?, ?, ?, ?, ?,
         (SELECT max(coalesce((SELECT max(act.id) FROM act WHERE act.session_id = session.id), 0),
            coalesce((SELECT max(act_also.act_id) FROM act_also WHERE act_also.session_id = session.id), 0))),
         rubric_version, ?, NULL, ?, ?, ?, ?,
         CASE WHEN second_look_of IS NOT NULL OR read_only = 1 OR archived_at IS NOT NULL OR finished_at IS NOT NULL THEN 0 ELSE ? END,
         archived_at IS NOT NULL
       FROM session JOIN trainee ON trainee.id = session.trainee_id WHERE session.id = ?`,
    JSON.stringify(kept.exercises),
    kept.clips,
    kept.flags,
    kept.mark,
    kept.score,
    kept.provisional ? 1 : 0,
    kept.byHand ? 1 : 0,
    kept.coverage,
    kept.mark === '' || kept.provisional ? 1 : 0,
    kept.judgingSha256,
    kept.state,
    kept.cameAt,
    kept.measured,
    kept.clipsLeft,
    dueOf(kept),
    sessionId,
  );
}

/** Whether somebody waits for a session of one's own (1), or it waits for its clips (2). */
const dueOf = ({ state, clips }: KeptSummary): 0 | 1 | 2 => (state === 'sent' ? 0 : clips > 0 ? 1 : 2);

/** Has a session's summary count as made from some judging data, though it is not made anew: its session can't be read. */
export function takeSummaryAsItIs(writing: Writing, sessionId: string, judgingSha256: string): void {
  run(writing, 'UPDATE session_summary SET judging_sha256 = ? WHERE session_id = ?', judgingSha256, sessionId);
}

/** The summary as it is kept, for checks; undefined when the session has none. */
export function readKeptSummary(reading: Reading, sessionId: string): KeptSummary | undefined {
  const sql = `SELECT ${columns} FROM session_summary ${itsSession} WHERE session_summary.session_id = ?`;
  const row = first<SummaryRow>(reading, sql, sessionId);
  return row && keptOf(row);
}

/** A session's line on the desk; null when the session isn't there. */
export function findSummary(reading: Reading, folder: LibraryFolder, sessionId: string): SessionSummary | null {
  const sql = `SELECT ${columns} FROM session_summary ${itsSession} WHERE session_summary.session_id = ?`;
  const row = first<SummaryRow>(reading, sql, sessionId);
  return row === undefined ? null : summaryOf(reading, folder, row);
}

/**
 * Which sessions a list shows, and in which order: every session by day; those with something to do, what came first
 * first; those with nothing to do, or second looks, the newest day first; those with a grade that can be handed over.
 */
export type SummaryList = 'newest' | 'due' | 'done' | 'secondLooks' | 'graded';

/** Where the last page of a list ended: the sort key of its last row. */
export type SummaryKey = readonly [due: number, dateOrCameAt: string, createdAt: string, sessionId: string];

const beforeAll: SummaryKey = [0, '~', '~', '~'];
const beforeAllDue: SummaryKey = [0, '', '', ''];

export type SummaryPage = {
  readonly sessions: readonly SessionSummary[];
  /** Null on the last page. */
  readonly next: SummaryKey | null;
  /** Those whose summary was made from other judging data, with the version of the rubric that judges them. */
  readonly rows: readonly { readonly id: string; readonly rubricVersion: number; readonly judgingSha256: string }[];
};

/** One page of a list of sessions. Reads its own rows and no more, however large the library. */
export function readSummaryPage(
  reading: Reading,
  folder: LibraryFolder,
  page: { readonly list: SummaryList; readonly after: SummaryKey | null; readonly limit: number },
): SummaryPage {
  const isDue = page.list === 'due';
  const [due, date, createdAt, sessionId] = page.after ?? (isDue ? beforeAllDue : beforeAll);
  const limit = page.limit + 1;
  const found = isDue
    ? all<SummaryRow>(reading, lists.due, due, date, sessionId, limit)
    : all<SummaryRow>(reading, lists[page.list], date, createdAt, sessionId, limit);
  const rows = found.slice(0, page.limit);
  const last = found.length > page.limit ? rows.at(-1) : undefined;
  return {
    sessions: rows.map((row) => summaryOf(reading, folder, row)),
    next: last === undefined ? null : [last.due, isDue ? last.came_at : last.date, last.created_at, last.id],
    rows: rows.map((row) => ({
      id: row.id,
      rubricVersion: row.rubric_version,
      judgingSha256: row.judging_sha256,
    })),
  };
}

// Named indexes: by the statistics of a small library, sorting all of it would look as good.
const nothingToDo = (
  secondLook: 0 | 1,
): string => `SELECT ${columns} FROM session_summary INDEXED BY session_summary_done ${itsSession}
  WHERE session_summary.second_look = ${secondLook} AND session_summary.archived = 0 AND session_summary.due = 0
    AND (session_summary.date, session_summary.created_at, session_summary.session_id) < (?, ?, ?)
  ORDER BY session_summary.date DESC, session_summary.created_at DESC, session_summary.session_id DESC
  LIMIT ?`;

const lists: Readonly<Record<SummaryList, string>> = {
  newest: `SELECT ${columns} FROM session INDEXED BY session_newest
    CROSS JOIN session_summary ON session_summary.session_id = session.id
    JOIN trainee ON trainee.id = session.trainee_id
    WHERE (session.date, session.created_at, session.id) < (?, ?, ?)
    ORDER BY session.date DESC, session.created_at DESC, session.id DESC LIMIT ?`,
  due: `SELECT ${columns} FROM session_summary INDEXED BY session_summary_due ${itsSession}
    WHERE session_summary.due > 0
      AND (session_summary.due, session_summary.came_at, session_summary.session_id) > (?, ?, ?)
    ORDER BY session_summary.due, session_summary.came_at, session_summary.session_id LIMIT ?`,
  done: nothingToDo(0),
  secondLooks: nothingToDo(1),
  graded: `SELECT ${columns} FROM session_summary INDEXED BY session_summary_graded ${itsSession}
    WHERE session_summary.mark <> '' AND session_summary.second_look = 0 AND session_summary.read_only = 0
      AND session_summary.archived = 0
      AND (session_summary.date, session_summary.created_at, session_summary.session_id) < (?, ?, ?)
    ORDER BY session_summary.date DESC, session_summary.created_at DESC, session_summary.session_id DESC LIMIT ?`,
};

/** Sessions under a version of the rubric whose summary was made from other judging data, at most some. */
export function listStale(
  reading: Reading,
  {
    version,
    judgingSha256,
    limit,
  }: { readonly version: number; readonly judgingSha256: string; readonly limit: number },
): string[] {
  const sql = 'SELECT session_id AS id FROM session_summary WHERE rubric_version = ? AND judging_sha256 <> ? LIMIT ?';
  return all<{ id: string }>(reading, sql, version, judgingSha256, limit).map((row) => row.id);
}

/** Sessions in use that have no summary, though each act writes one: a fault took it away. */
export const listWithoutSummary = (reading: Reading): string[] =>
  all<{ id: string }>(
    reading,
    `SELECT id FROM session WHERE removed_at IS NULL
       AND NOT EXISTS (SELECT 1 FROM session_summary WHERE session_summary.session_id = session.id)`,
  ).map(({ id }) => id);

/** SHA-256 of what a session would hand over, null when it is not known since something changed. */
export function readContentHash(reading: Reading, sessionId: string): string | null {
  const sql = 'SELECT content_sha256 FROM session_summary WHERE session_id = ?';
  return first<{ content_sha256: string | null }>(reading, sql, sessionId)?.content_sha256 ?? null;
}

/** Notes what a session would hand over now. It is forgotten with the next change to it, its trainee or their sessions. */
export function setContentHash(writing: Writing, sessionId: string, sha256: string): void {
  run(writing, 'UPDATE session_summary SET content_sha256 = ? WHERE session_id = ?', sha256, sessionId);
}

/** Forgets what a session would hand over. */
export function forgetContentHash(writing: Writing, sessionId: string): void {
  run(writing, 'UPDATE session_summary SET content_sha256 = NULL WHERE session_id = ?', sessionId);
}

/** Forgets what the sessions of a trainee would hand over: a letter tells of the sessions before it. */
export function forgetContents(writing: Writing, traineeId: string): void {
  const sql = 'UPDATE session_summary SET content_sha256 = NULL WHERE trainee_id = ? AND content_sha256 IS NOT NULL';
  run(writing, sql, traineeId);
}

const exerciseList = v.array(v.string());

function keptOf(row: SummaryRow): KeptSummary {
  return {
    exercises: v.parse(exerciseList, JSON.parse(row.exercises)),
    clips: row.clips,
    flags: row.flags,
    mark: row.mark,
    score: row.score,
    provisional: row.provisional === 1,
    byHand: row.by_hand === 1,
    coverage: row.coverage,
    state: row.state,
    cameAt: row.came_at,
    measured: row.measured,
    clipsLeft: row.clips_left,
    judgingSha256: row.judging_sha256,
  };
}

/** Whether what a session's line is read from is as the app left it. */
const isLineSound = (reading: Reading, { id, trainee_id }: SummaryRow): boolean =>
  agreesWithDigest(reading, 'session', id) &&
  agreesWithDigest(reading, 'session_summary', id) &&
  agreesWithDigest(reading, 'trainee', trainee_id);

/** Has summaries made anew that changed on the disk by themselves: they hold nothing that isn't read from other rows. */
export function forgetDamagedSummaries(writing: Writing): void {
  inTransaction(writing, () => {
    for (const { table, owner } of listDiffering(writing, ['session_summary'])) {
      run(writing, "UPDATE session_summary SET judging_sha256 = '' WHERE session_id = ?", owner);
      takeForSound(writing, table, owner);
    }
  });
}

function summaryOf(reading: Reading, folder: LibraryFolder, row: SummaryRow): SessionSummary {
  const { judgingSha256: _, score: __, exercises, ...kept } = keptOf(row);
  return {
    id: row.id,
    traineeId: row.trainee_id,
    traineeName: row.trainee_name,
    title: row.title,
    date: row.date,
    secondLookOf: row.second_look_of,
    readOnly: row.read_only === 1,
    archived: row.archived === 1,
    finished: row.finished_at !== null,
    damaged: !isLineSound(reading, row),
    ...kept,
    exercises: [...exercises],
    posters: postersOf(reading, folder, row.id),
  };
}
