import type { LetterEdit } from '../../../engine/letter/edits.ts';
import { all, type Reading } from './connection.ts';
import type { Row } from './journaledTables.ts';

export type LetterEditRow = Row & LetterEdit & { readonly id: string; readonly session_id: string };

/** The paragraphs of a session's letter that the coach changed. */
export function listLetterEdits(reading: Reading, sessionId: string): LetterEditRow[] {
  return all<LetterEditRow>(reading, 'SELECT * FROM letter_edit WHERE session_id = ? ORDER BY paragraph', sessionId);
}
