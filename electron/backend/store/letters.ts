import { randomUUID } from 'node:crypto';
import type { LetterEdit } from '../../../engine/letter/edits.ts';
import type { Row } from './changes.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';

export type LetterEditRow = Row & LetterEdit & { readonly id: string; readonly session_id: string };

/** The paragraphs of a session's letter that the coach changed. */
export function listLetterEdits(reading: Reading, sessionId: string): LetterEditRow[] {
  return all<LetterEditRow>(reading, 'SELECT * FROM letter_edit WHERE session_id = ? ORDER BY paragraph', sessionId);
}

/** A letter as it was sent; documents, review and grade are JSON texts. */
export type SentLetterRow = {
  readonly session_id: string;
  readonly version: number;
  readonly sent_at: string;
  readonly rubric_version: number;
  readonly letter: string;
  readonly document: string;
  readonly review: string;
  readonly grade: string;
  readonly sha256: string;
};

/** The letters of a session that were sent, the first version first. */
export function listSentLetters(reading: Reading, sessionId: string): SentLetterRow[] {
  return all<SentLetterRow>(reading, 'SELECT * FROM sent_letter WHERE session_id = ? ORDER BY version', sessionId);
}

/** One version of a letter that was sent. */
export function findSentLetter(reading: Reading, sessionId: string, version: number): SentLetterRow | undefined {
  const sql = 'SELECT * FROM sent_letter WHERE session_id = ? AND version = ?';
  return first<SentLetterRow>(reading, sql, sessionId, version);
}

/** Keeps a letter for good, as the session's next version; the database refuses every later change to it. */
export function insertSentLetter(writing: Writing, row: Omit<SentLetterRow, 'version'>): SentLetterRow {
  const version = listSentLetters(writing, row.session_id).length + 1;
  const values = { ...row, version };
  run(
    writing,
    `INSERT INTO sent_letter
       (id, session_id, version, sent_at, rubric_version, letter, document, review, grade, sha256)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    randomUUID(),
    row.session_id,
    version,
    row.sent_at,
    row.rubric_version,
    row.letter,
    row.document,
    row.review,
    row.grade,
    row.sha256,
  );
  return values;
}
