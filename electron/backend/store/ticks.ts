import type { Tick } from '../../../engine/review/review.ts';
import { all, type Reading } from './connection.ts';
import { numbersOf } from './flags.ts';
import type { Row } from './journaledTables.ts';

export type TickRow = Row & {
  readonly id: string;
  readonly clip_id: string;
  readonly criterion: string;
  readonly rep_id: string | null;
};

/** A clip's ticks; of one criterion, or of all. */
export function listTicks(reading: Reading, clipId: string, criterion?: string): TickRow[] {
  return all<TickRow>(
    reading,
    'SELECT * FROM tick WHERE clip_id = ? AND criterion = coalesce(?, criterion) ORDER BY criterion, id',
    clipId,
    criterion ?? null,
  );
}

/** A clip's ticks as the review format has them: one for the whole set, one for the reps, of each criterion. */
export function ticksOf(rows: readonly TickRow[], clipId: string, numbers: ReadonlyMap<string, number>): Tick[] {
  const byCriterion = Map.groupBy(rows, (row) => row.criterion);
  return [...byCriterion].flatMap(([criterion, ofCriterion]) => {
    const repIds = ofCriterion.flatMap((row) => row.rep_id ?? []);
    const wholeSet = ofCriterion.some((row) => row.rep_id === null);
    const ticks: Tick[] = [];
    if (wholeSet) ticks.push({ clip: clipId, criterion, reps: 'set' });
    if (repIds.length > 0) ticks.push({ clip: clipId, criterion, reps: numbersOf(repIds, numbers) });
    return ticks;
  });
}
