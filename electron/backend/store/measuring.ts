import * as v from 'valibot';
import { type SetUp, setUpSchema } from '../../../engine/recording/setUp.ts';
import type { Row } from './changes.ts';
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
