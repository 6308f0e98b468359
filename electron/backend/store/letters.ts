import { randomUUID } from 'node:crypto';
import * as v from 'valibot';
import type { LetterEdit } from '../../../engine/letter/edits.ts';
import type { LetterShape, OwnParagraph } from '../../../engine/letter/shape.ts';
import type { Row } from './changes.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';
import { assertSound } from './rowDigests.ts';

export type LetterEditRow = Row & LetterEdit & { readonly id: string; readonly session_id: string };

/** The paragraphs of a session's letter that the coach changed. */
export function listLetterEdits(reading: Reading, sessionId: string): LetterEditRow[] {
  return all<LetterEditRow>(reading, 'SELECT * FROM letter_edit WHERE session_id = ? ORDER BY paragraph', sessionId);
}

export type LetterParagraphRow = Row & OwnParagraph & { readonly session_id: string };

export type LeftOutRow = Row & { readonly id: string; readonly session_id: string; readonly paragraph: string };

/** The paragraphs of a session's letter that the coach left out. */
export function listLeftOut(reading: Reading, sessionId: string): LeftOutRow[] {
  const sql = 'SELECT * FROM letter_left_out WHERE session_id = ? ORDER BY paragraph';
  return all<LeftOutRow>(reading, sql, sessionId);
}

/** The coach's own paragraph of a session's letter; undefined where it has none of that id. */
export function findOwnParagraph(reading: Reading, sessionId: string, id: string): LetterParagraphRow | undefined {
  const sql = 'SELECT * FROM letter_paragraph WHERE session_id = ? AND id = ?';
  return first<LetterParagraphRow>(reading, sql, sessionId, id);
}

const orderSchema = v.array(v.string());

/** What the coach made of a session's letter beyond its words. */
export function readLetterShape(reading: Reading, sessionId: string): LetterShape {
  const own = all<LetterParagraphRow>(
    reading,
    'SELECT * FROM letter_paragraph WHERE session_id = ? ORDER BY id',
    sessionId,
  );
  const kept = first<{ parts: string }>(reading, 'SELECT parts FROM letter_order WHERE session_id = ?', sessionId);
  return {
    own: own.map(({ id, words, basis }) => ({ id, words, basis })),
    leftOut: listLeftOut(reading, sessionId).map(({ paragraph }) => paragraph),
    order: kept === undefined ? [] : v.parse(orderSchema, JSON.parse(kept.parts)),
  };
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
  assertSound(reading, 'sent_letter', sessionId, 'partDamaged');
  return all<SentLetterRow>(reading, 'SELECT * FROM sent_letter WHERE session_id = ? ORDER BY version', sessionId);
}

/** One version of a letter that was sent. */
export function findSentLetter(reading: Reading, sessionId: string, version: number): SentLetterRow | undefined {
  assertSound(reading, 'sent_letter', sessionId, 'partDamaged');
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
