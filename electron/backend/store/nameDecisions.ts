import { randomUUID } from 'node:crypto';
import { type NameDecision, type NamePlace, placeId } from '../../../engine/names/hideName.ts';
import type { Changes, Row } from './changes.ts';
import { all, type Reading } from './connection.ts';

type NameDecisionRow = Row & {
  readonly id: string;
  readonly session_id: string;
  readonly place: string;
  readonly words_before: string;
  readonly word: string;
  readonly words_after: string;
  readonly verdict: NameDecision['is'];
};

const decisionOf = ({ place, words_before, word, words_after, verdict }: NameDecisionRow): NameDecision => ({
  ...{ place, before: words_before, word, after: words_after },
  is: verdict,
});

const rowsOf = (reading: Reading, sessionId: string): NameDecisionRow[] =>
  all<NameDecisionRow>(reading, 'SELECT * FROM name_decision WHERE session_id = ? ORDER BY id', sessionId);

/** What was said of places in a session that may hold its trainee's name. */
export const listNameDecisions = (reading: Reading, sessionId: string): NameDecision[] =>
  rowsOf(reading, sessionId).map(decisionOf);

/** Keeps what was said of places, within an act; the last word on a place counts. */
export function decideOnNames(
  changes: Changes,
  sessionId: string,
  places: readonly NamePlace[],
  is: NameDecision['is'],
): void {
  const known = new Map(rowsOf(changes.reading, sessionId).map((row) => [placeId(decisionOf(row)), row.id]));
  for (const place of new Map(places.map((one) => [placeId(one), one])).values()) {
    const id = known.get(placeId(place));
    if (id !== undefined) changes.update('name_decision', { id }, { verdict: is });
    else
      changes.insert('name_decision', {
        ...{ id: randomUUID(), session_id: sessionId, place: place.place },
        ...{ words_before: place.before, word: place.word, words_after: place.after, verdict: is },
      });
  }
}
