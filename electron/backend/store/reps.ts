import type { Rep } from '../../../engine/review/review.ts';
import { all, type Reading } from './connection.ts';
import type { Row } from './journaledTables.ts';
import { momentOf } from './moments.ts';

export type RepRow = Row & { readonly id: string; readonly clip_id: string };

/** A clip's reps in the order of their starts: rep number n is the n-th, counted from 1. */
export function listReps(reading: Reading, clipId: string): RepRow[] {
  return all<RepRow>(reading, 'SELECT * FROM rep WHERE clip_id = ? ORDER BY start_frame, start_seconds, id', clipId);
}

/** A rep as the review format has it. */
export function repOf(row: RepRow, index: number): Rep {
  const start = momentOf(row, 'start');
  if (!start) throw new Error(`Rep ${row.id} has no start.`);
  const longEnd = momentOf(row, 'long_end');
  const end = momentOf(row, 'end');
  return { index, start, ...(longEnd && { longEnd }), ...(end && { end }) };
}
