import type { Job } from '../../contract/jobs.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';

/** A job that waits in the measuring lane; `rank`: below 0 where a person has put it in its place. */
export type Waiting = { readonly id: string; readonly rank: number };

/** A job as it is stored; `task` is JSON that its runner reads. */
export type JobRow = {
  readonly id: string;
  readonly kind: Job['kind'];
  readonly title: string;
  readonly state: Job['state'];
  readonly message: string;
  readonly session_id: string | null;
  readonly clip_id: string | null;
  readonly task: string;
};

const columns = 'id, kind, title, state, message, session_id, clip_id, task';

/** Every job, in the order they were asked for. */
export function listJobs(reading: Reading): JobRow[] {
  return all<JobRow>(reading, `SELECT ${columns} FROM job ORDER BY number`);
}

/** One job, or undefined. */
export function findJob(reading: Reading, jobId: string): JobRow | undefined {
  return first<JobRow>(reading, `SELECT ${columns} FROM job WHERE id = ?`, jobId);
}

/** Jobs of different lanes run beside each other, those of one lane one after the other. */
export type JobLane = 'measuring' | 'footage' | 'handover';

const kindsOf: Readonly<Record<JobLane, string>> = {
  measuring: "kind = 'measure'",
  handover: "kind IN ('handover', 'narration')",
  footage: "kind NOT IN ('measure', 'handover', 'narration')",
};

/** What decides which job of the measuring lane is next besides its rank. */
export type LineView = {
  /** The clip on screen: its measuring comes before what nobody has put in its place. */
  readonly clipOnScreen: string | null;
  /** While it is paused, only what takes seconds is taken up. */
  readonly paused: boolean;
};

const takesLong = "coalesce(json_extract(task, '$.joints'), 0)";
const inLine = `CASE WHEN rank < 0 THEN 0 WHEN clip_id = ? THEN 1 ELSE 2 END, rank, number`;

/**
 * The job of a lane to take up next, or undefined: by rank, then the one that has waited longest. Measuring without joints goes
 * first: it takes seconds, and somebody who clicked the disc waits for it.
 */
export function nextWaitingJob(reading: Reading, lane: JobLane, view: LineView): JobRow | undefined {
  const waiting = `SELECT ${columns} FROM job WHERE state = 'waiting' AND ${kindsOf[lane]}`;
  if (lane !== 'measuring') return first<JobRow>(reading, `${waiting} ORDER BY rank, number LIMIT 1`);
  const unlessPaused = view.paused ? `AND ${takesLong} = 0` : '';
  const sql = `${waiting} ${unlessPaused} ORDER BY ${takesLong}, ${inLine} LIMIT 1`;
  return first<JobRow>(reading, sql, view.clipOnScreen);
}

/** The clips that wait to be measured, in the order they are taken up. */
export function listMeasuringLine(reading: Reading, clipOnScreen: string | null): Waiting[] {
  const sql = `SELECT id, rank FROM job WHERE state = 'waiting' AND kind = 'measure' AND ${takesLong} = 1 ORDER BY ${inLine}`;
  return all<Waiting>(reading, sql, clipOnScreen);
}

/** Gives a job its rank. */
export function setRank(writing: Writing, { id, rank }: Waiting): void {
  run(writing, 'UPDATE job SET rank = ? WHERE id = ?', rank, id);
}

/** Whether a clip ever was in line to be measured, however that ended. */
export function hadMeasuring(reading: Reading, clipId: string): boolean {
  const sql = "SELECT 1 AS there FROM job WHERE clip_id = ? AND kind = 'measure' LIMIT 1";
  return first<{ there: number }>(reading, sql, clipId) !== undefined;
}

/** Takes the measuring out of the line that nobody asked for. */
export function removeUnaskedMeasuring(writing: Writing): void {
  run(writing, "DELETE FROM job WHERE state = 'waiting' AND kind = 'measure' AND rank > 0");
}

/** How many jobs of a lane wait. */
export function countWaitingJobs(reading: Reading, lane: JobLane): number {
  const sql = `SELECT count(*) AS waiting FROM job WHERE state = 'waiting' AND ${kindsOf[lane]}`;
  return first<{ readonly waiting: number }>(reading, sql)?.waiting ?? 0;
}

/** The measuring of a clip that runs or was asked for last and waits, or undefined. */
export function findOpenMeasuring(reading: Reading, clipId: string): JobRow | undefined {
  return first<JobRow>(
    reading,
    `SELECT ${columns} FROM job WHERE clip_id = ? AND kind = 'measure' AND state IN ('waiting', 'running')
      ORDER BY number DESC LIMIT 1`,
    clipId,
  );
}

/** The batches of files that are being read into the inbox, or wait for it. */
export function listOpenBatches(reading: Reading): ReadonlySet<string> {
  const sql = `SELECT json_extract(task, '$.batchId') AS batch FROM job
    WHERE kind = 'arrive' AND state IN ('waiting', 'running')`;
  return new Set(all<{ batch: string }>(reading, sql).map(({ batch }) => batch));
}

/** Adds a waiting job. */
export function insertJob(writing: Writing, job: Omit<JobRow, 'state' | 'message'>, rank: number): void {
  run(
    writing,
    `INSERT INTO job (id, kind, title, state, message, session_id, clip_id, task, created_at, rank)
      VALUES (?, ?, ?, 'waiting', '', ?, ?, ?, ?, ?)`,
    job.id,
    job.kind,
    job.title,
    job.session_id,
    job.clip_id,
    job.task,
    new Date().toISOString(),
    rank,
  );
}

/** Moves a job to a state, with what to say about it. */
export function setJobState(writing: Writing, jobId: string, state: Job['state'], message: string): void {
  run(writing, 'UPDATE job SET state = ?, message = ? WHERE id = ?', state, message, jobId);
}

/** Notes what a job made; in the same transaction as the making, so that a job never makes it twice. */
export function finishJob(
  writing: Writing,
  jobId: string,
  made: { readonly sessionId: string; readonly clipId: string | null },
): void {
  run(
    writing,
    "UPDATE job SET state = 'done', message = '', session_id = ?, clip_id = ? WHERE id = ?",
    made.sessionId,
    made.clipId,
    jobId,
  );
}

/**
 * Puts jobs that were running when the last process ended back in line, and forgets old ones that ended; a clip that
 * somebody took out of the line is remembered, so that it isn't measured by itself again.
 */
export function recoverJobs(writing: Writing): void {
  run(writing, "UPDATE job SET state = 'waiting', message = '' WHERE state = 'running'");
  run(
    writing,
    `DELETE FROM job WHERE (state = 'done' OR (state = 'cancelled' AND kind <> 'measure'))
      AND number <= (SELECT coalesce(max(number), 0) FROM job) - 200`,
  );
}
