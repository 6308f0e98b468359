import { randomUUID } from 'node:crypto';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';

/** A handover as it was handed over; `manifest` is a JSON text. */
export type HandoverRow = {
  readonly id: string;
  readonly session_id: string;
  readonly version: number;
  readonly handed_at: string;
  readonly rubric_version: number;
  readonly letter_version: number;
  readonly names: NameMode;
  readonly manifest: string;
  readonly content_sha256: string;
  readonly file: string;
  readonly sha256: string;
  readonly last_act: number;
};

/** One time that a handover was written out; `failed` is a JSON text. */
export type DeliveryRow = {
  readonly job_id: string;
  readonly handover_id: string;
  readonly delivered_at: string;
  readonly path: string;
  readonly bytes: number;
  readonly failed: string;
};

/** What was handed over of a session, the first version first. */
export function listHandovers(reading: Reading, sessionId: string): HandoverRow[] {
  return all<HandoverRow>(reading, 'SELECT * FROM handover WHERE session_id = ? ORDER BY version', sessionId);
}

/** What was handed over of every session. */
export function listAllHandovers(reading: Reading): HandoverRow[] {
  return all<HandoverRow>(reading, 'SELECT * FROM handover ORDER BY session_id, version');
}

/** Each time that something of a session was written out, the first first. */
export function listDeliveries(reading: Reading, sessionId: string): (DeliveryRow & { readonly version: number })[] {
  return all(
    reading,
    `SELECT handover_delivery.*, handover.version FROM handover_delivery
      JOIN handover ON handover.id = handover_delivery.handover_id
      WHERE handover.session_id = ? ORDER BY handover_delivery.delivered_at, handover_delivery.rowid`,
    sessionId,
  );
}

/** What a job wrote out, or undefined. */
export function findDelivery(reading: Reading, jobId: string): DeliveryRow | undefined {
  return first<DeliveryRow>(reading, 'SELECT * FROM handover_delivery WHERE job_id = ?', jobId);
}

/** Forgets that a job wrote something out: it lies nowhere. */
export function removeDelivery(writing: Writing, jobId: string): void {
  run(writing, 'DELETE FROM handover_delivery WHERE job_id = ?', jobId);
}

/** The newest act of a session, taken back or not; 0 without any. */
export function newestAct(reading: Reading, sessionId: string): number {
  const sql = `SELECT max(coalesce((SELECT max(id) FROM act WHERE session_id = ?), 0),
    coalesce((SELECT max(act_id) FROM act_also WHERE session_id = ?), 0)) AS id`;
  return first<{ id: number }>(reading, sql, sessionId, sessionId)?.id ?? 0;
}

/** Keeps a handover for good; the database refuses every later change to it. */
export function insertHandover(writing: Writing, row: Omit<HandoverRow, 'id'>): HandoverRow {
  const whole = { id: randomUUID(), ...row };
  run(
    writing,
    `INSERT INTO handover (id, session_id, version, handed_at, rubric_version, letter_version, names, manifest,
       content_sha256, file, sha256, last_act)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    whole.id,
    whole.session_id,
    whole.version,
    whole.handed_at,
    whole.rubric_version,
    whole.letter_version,
    whole.names,
    whole.manifest,
    whole.content_sha256,
    whole.file,
    whole.sha256,
    whole.last_act,
  );
  return whole;
}

/** Notes that a handover was written out. */
export function insertDelivery(writing: Writing, row: DeliveryRow): void {
  run(
    writing,
    `INSERT INTO handover_delivery (job_id, handover_id, delivered_at, path, bytes, failed)
     VALUES (?, ?, ?, ?, ?, ?)`,
    row.job_id,
    row.handover_id,
    row.delivered_at,
    row.path,
    row.bytes,
    row.failed,
  );
}
