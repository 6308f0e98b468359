import { all, type Reading } from './connection.ts';
import type { Row } from './journaledTables.ts';

/** What a person said to a suggestion. */
export type SuggestionAnswerRow = Row & {
  readonly clip_id: string;
  readonly suggestion_id: string;
  readonly answer: 'accepted' | 'dismissed';
  /** The flag that an accepted one became. */
  readonly flag_id: string | null;
};

/** The answers to a clip's suggestions. */
export function listSuggestionAnswers(reading: Reading, clipId: string): SuggestionAnswerRow[] {
  return all<SuggestionAnswerRow>(
    reading,
    'SELECT * FROM suggestion_answer WHERE clip_id = ? ORDER BY suggestion_id',
    clipId,
  );
}
