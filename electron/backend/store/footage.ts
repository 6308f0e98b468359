import type { ClipFacts } from '../../../engine/review/review.ts';
import { all, first, type Reading, run, type Value, type Writing } from './connection.ts';

/** What is known of one video file; shared by all clips that show it. */
export type FootageRow = {
  readonly id: string;
  readonly sha256: string | null;
  /** Name inside the clips folder; null = facts alone. */
  readonly file: string | null;
  readonly size_bytes: number | null;
  /** When the file was changed last, at a time when its content was right. */
  readonly file_modified_ms: number | null;
  readonly container: string;
  readonly codec: string;
  readonly width: number;
  readonly height: number;
  readonly rotation_deg: ClipFacts['rotationDeg'];
  readonly shown_width: number;
  readonly shown_height: number;
  readonly frames: number;
  readonly time_base_numerator: number;
  readonly time_base_denominator: number;
  /** When the first frame appears. */
  readonly start_us: number;
  readonly duration_us: number;
  readonly constant_rate: number;
  readonly mean_fps: number;
  readonly capture_fps: number | null;
  readonly real_time_factor: number;
  readonly has_audio: number;
  readonly plays: 'as-is' | 'proxy' | null;
  readonly proxy_reason: string;
  readonly proxy_file: string | null;
  readonly proxy_size_bytes: number | null;
  readonly proxy_modified_ms: number | null;
  readonly proxy_sha256: string | null;
  readonly poster_file: string | null;
  readonly filmstrip_file: string | null;
  readonly filmstrip_pictures: number;
};

/** One piece of footage, or undefined. */
export function findFootage(reading: Reading, footageId: string): FootageRow | undefined {
  return first<FootageRow>(reading, 'SELECT * FROM footage WHERE id = ?', footageId);
}

/** The footage of a clip, or undefined when nothing is known of its file. */
export function footageOfClip(reading: Reading, clipId: string): FootageRow | undefined {
  const sql = 'SELECT footage.* FROM footage JOIN clip ON clip.footage_id = footage.id WHERE clip.id = ?';
  return first<FootageRow>(reading, sql, clipId);
}

/** Footage with this content whose file the library holds, or undefined. */
export function findFootageByContent(reading: Reading, sha256: string): FootageRow | undefined {
  return first<FootageRow>(reading, 'SELECT * FROM footage WHERE sha256 = ? AND file IS NOT NULL', sha256);
}

/** What the clips of a session show, each once. */
export function listFootageOfSession(reading: Reading, sessionId: string): FootageRow[] {
  const sql = `SELECT footage.* FROM footage WHERE id IN (
    SELECT clip.footage_id FROM entry JOIN clip ON clip.entry_id = entry.id
    WHERE entry.session_id = ? AND clip.removed_at IS NULL AND entry.removed_at IS NULL)`;
  return all<FootageRow>(reading, sql, sessionId);
}

/** What a clip of some footage is called. */
export function clipNameOf(reading: Reading, { id, file }: FootageRow): string {
  const sql = 'SELECT name FROM clip WHERE footage_id = ? ORDER BY removed_at IS NOT NULL LIMIT 1';
  return first<{ name: string }>(reading, sql, id)?.name ?? file ?? '';
}

/** Whether a session has a clip of this footage already. */
export function sessionShowsFootage(reading: Reading, sessionId: string, footageId: string): boolean {
  const sql = `SELECT 1 FROM clip JOIN entry ON entry.id = clip.entry_id
    WHERE entry.session_id = ? AND clip.footage_id = ? AND clip.removed_at IS NULL AND entry.removed_at IS NULL`;
  return first(reading, sql, sessionId, footageId) !== undefined;
}

/** The ids of the sessions that have a clip of this footage. */
export function sessionsOfFootage(reading: Reading, footageId: string): string[] {
  const sql = `SELECT DISTINCT entry.session_id AS id FROM clip JOIN entry ON entry.id = clip.entry_id
    WHERE clip.footage_id = ?`;
  return all<{ id: string }>(reading, sql, footageId).map((row) => row.id);
}

/** Adds footage. It is no act: it says what a file is, and stays when clips come and go. */
export function insertFootage(writing: Writing, row: FootageRow): void {
  const names = Object.keys(row);
  const marks = names.map(() => '?').join(', ');
  const values: Value[] = Object.values(row);
  run(writing, `INSERT INTO footage (${names.join(', ')}) VALUES (${marks})`, ...values);
}

/** Notes that the proxy of footage is there. */
export function setProxyFile(writing: Writing, footageId: string, file: string): void {
  run(writing, 'UPDATE footage SET proxy_file = ? WHERE id = ?', file, footageId);
}

/** The facts of footage as the review format has them. */
export function factsOf(row: FootageRow): ClipFacts {
  return {
    ...(row.sha256 !== null && { sha256: row.sha256 }),
    codec: row.codec,
    width: row.width,
    height: row.height,
    rotationDeg: row.rotation_deg,
    frames: row.frames,
    timeBase: { numerator: row.time_base_numerator, denominator: row.time_base_denominator },
    ...(row.start_us !== 0 && { startUs: row.start_us }),
    durationUs: row.duration_us,
  };
}
