import { mostInReview } from '../../../engine/review/limits.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Change, Changes, JournaledTable, Row } from './changes.ts';
import { first, type Reading } from './connection.ts';

type Counted = 'entries' | 'clips' | 'flags' | 'reps';

/** How many a session, an entry or a clip has in use. */
const counts: Readonly<Record<Counted, string>> = {
  entries: 'SELECT count(*) AS n FROM entry WHERE session_id = ? AND removed_at IS NULL',
  clips: 'SELECT count(*) AS n FROM clip WHERE entry_id = ? AND removed_at IS NULL',
  flags: `SELECT count(*) AS n FROM clip JOIN flag ON flag.clip_id = clip.id
    WHERE clip.entry_id = ? AND clip.removed_at IS NULL AND flag.parked = 0`,
  reps: 'SELECT count(*) AS n FROM rep WHERE clip_id = ?',
};

/**
 * Throws `conflict` where an act would leave more in a session than a review can hold. What is over that already, from an
 * older version, can be changed and made less.
 */
export function assertWithinLimits({ list, reading }: Changes): void {
  check(reading, 'entries', homes(list, 'entry', 'session_id'));
  const entries = homes(list, 'clip', 'entry_id');
  check(reading, 'clips', entries);
  const flagged = [...homes(list, 'flag', 'clip_id')].flatMap((clipId) => entryOf(reading, clipId));
  check(reading, 'flags', new Set([...entries, ...flagged]));
  check(reading, 'reps', homes(list, 'rep', 'clip_id'));
}

/** What rows of a table came into use in, by an act. */
function homes(list: readonly Change[], table: JournaledTable, column: string): ReadonlySet<string> {
  const grown = list.filter(
    ({ table: of, before, after }) =>
      of === table && isInUse(after) && !(isInUse(before) && before?.[column] === after?.[column]),
  );
  return new Set(grown.map(({ after }) => String(after?.[column])));
}

const isInUse = (row: Row | null): boolean => row !== null && (row.removed_at ?? null) === null && row.parked !== 1;

const entryOf = (reading: Reading, clipId: string): readonly string[] =>
  [first<{ id: string }>(reading, 'SELECT entry_id AS id FROM clip WHERE id = ?', clipId)?.id ?? []].flat();

function check(reading: Reading, what: Counted, ids: ReadonlySet<string>): void {
  const most = mostInReview[what];
  for (const id of ids) {
    const found = first<{ n: number }>(reading, counts[what], id)?.n ?? 0;
    if (found > most) throw new ProblemError('conflict', 'reviewFull', { what, most });
  }
}
