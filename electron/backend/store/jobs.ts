import type { Job } from '../../contract/jobs.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';

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

/**
 * The job of a lane to take up next, or undefined: the one that has waited longest. Measuring without joints goes first:
 * it takes seconds, and somebody who clicked the disc waits for it.
 */
export function nextWaitingJob(reading: Reading, lane: JobLane): JobRow | undefined {
  const mine = kindsOf[lane];
  const quickFirst = lane === 'measuring' ? "coalesce(json_extract(task, '$.joints'), 0), " : '';
  return first<JobRow>(
    reading,
    `SELECT ${columns} FROM job WHERE state = 'waiting' AND ${mine} ORDER BY ${quickFirst}number LIMIT 1`,
  );
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
export function insertJob(writing: Writing, job: Omit<JobRow, 'state' | 'message'>): void {
  run(
    writing,
    `INSERT INTO job (id, kind, title, state, message, session_id, clip_id, task, created_at)
      VALUES (?, ?, ?, 'waiting', '', ?, ?, ?, ?)`,
    job.id,
    job.kind,
    job.title,
    job.session_id,
    job.clip_id,
    job.task,
    new Date().toISOString(),
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

/** Puts jobs that were running when the last process ended back in line, and forgets old finished ones. */
export function recoverJobs(writing: Writing): void {
  run(writing, "UPDATE job SET state = 'waiting', message = '' WHERE state = 'running'");
  run(
    writing,
    `DELETE FROM job WHERE state IN ('done', 'cancelled')
      AND number <= (SELECT coalesce(max(number), 0) FROM job) - 200`,
  );
}
