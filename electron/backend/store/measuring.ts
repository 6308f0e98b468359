import * as v from 'valibot';
import { type SetUp, setUpSchema } from '../../../engine/recording/setUp.ts';
import type { Row } from './changes.ts';
import type { ClipHome } from './clips.ts';
import { all, first, type Reading } from './connection.ts';

/** What the coach says of a clip so that it can be measured; the usual values where nothing was said. */
export function readSetUp(reading: Reading, clipId: string): SetUp {
  return v.parse(setUpSchema, storedSetUp(reading, clipId) ?? {});
}

/** The set-up of a clip where something was said of it, or undefined. */
export function findSetUp(reading: Reading, clipId: string): SetUp | undefined {
  const stored = storedSetUp(reading, clipId);
  return stored === undefined ? undefined : v.parse(setUpSchema, stored);
}

/** The row of a clip's set-up. */
export function setUpRow(clipId: string, setUp: SetUp): Row {
  return { clip_id: clipId, set_up: JSON.stringify(setUp) };
}

function storedSetUp(reading: Reading, clipId: string): unknown {
  const row = first<{ set_up: string }>(reading, 'SELECT set_up FROM clip_set_up WHERE clip_id = ?', clipId);
  return row && JSON.parse(row.set_up);
}

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

/**
 * Ids of suggestions that lie dismissed on a trainee's other clips of the same exercise, in their twelve newest sessions. A second look
 * and its first session are left out for each other; what lies in the bin counts no more.
 */
export function listDismissedBefore(
  reading: Reading,
  { id, session_id: sessionId, exercise }: Pick<ClipHome, 'id' | 'session_id' | 'exercise'>,
): string[] {
  return all<{ suggestion_id: string }>(
    reading,
    `SELECT DISTINCT answer.suggestion_id FROM (
       SELECT other.id FROM session AS own JOIN session AS other ON other.trainee_id = own.trainee_id
       WHERE own.id = ? AND other.removed_at IS NULL AND other.id IS NOT own.second_look_of AND other.second_look_of IS NOT own.id
       ORDER BY other.date DESC, other.created_at DESC LIMIT 12
     ) AS recent
     JOIN entry ON entry.session_id = recent.id JOIN clip ON clip.entry_id = entry.id
     JOIN suggestion_answer AS answer ON answer.clip_id = clip.id
     WHERE entry.exercise = ? AND clip.id <> ? AND answer.answer = 'dismissed'
       AND entry.removed_at IS NULL AND clip.removed_at IS NULL`,
    sessionId,
    exercise,
    id,
  ).map((row) => row.suggestion_id);
}
