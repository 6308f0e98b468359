import type { MeasuredEdge, Rep } from '../../../engine/review/review.ts';
import type { Moment } from '../../../engine/time/moment.ts';
import type { Row } from './changes.ts';
import { momentColumns, momentOf } from './columns.ts';
import { all, type Reading } from './connection.ts';

export type RepRow = Row & {
  readonly id: string;
  readonly clip_id: string;
  /** The name that the same rep has in every clip of a set; null = no other clip shows it. */
  readonly same_rep: string | null;
} & Readonly<Record<`${EdgeColumn}_measured`, number>>;

/** The edges of a rep as its columns name them, in the order of time. */
export const edgeColumns = ['start', 'stretched_end', 'end'] as const;
export type EdgeColumn = (typeof edgeColumns)[number];

/** The same edges as the review format names them. */
export const edgeOf = { start: 'start', stretched_end: 'stretchedEnd', end: 'end' } as const satisfies Record<
  EdgeColumn,
  MeasuredEdge
>;

/** The columns of an edge that a person set, measured, or took away (`undefined`). */
export function edgeMoment(edge: EdgeColumn, moment: Moment | undefined, by: 'person' | 'measure'): Row {
  return { ...momentColumns(edge, moment), [`${edge}_measured`]: moment !== undefined && by === 'measure' ? 1 : 0 };
}

/** The edges of a rep that are there and were measured. */
export function measuredEdges(row: RepRow): MeasuredEdge[] {
  return edgeColumns
    .filter((edge) => row[`${edge}_measured`] === 1 && momentOf(row, edge) !== undefined)
    .map((edge) => edgeOf[edge]);
}

/** A clip's reps in the order of their starts: rep number n is the n-th, counted from 1. */
export function listReps(reading: Reading, clipId: string): RepRow[] {
  return all<RepRow>(reading, 'SELECT * FROM rep WHERE clip_id = ? ORDER BY start_frame, start_seconds, id', clipId);
}

/** A rep as the review format has it. */
export function repOf(row: RepRow, index: number): Rep {
  const start = momentOf(row, 'start');
  if (!start) throw new Error(`Rep ${row.id} has no start.`);
  const stretchedEnd = momentOf(row, 'stretched_end');
  const end = momentOf(row, 'end');
  const measured = measuredEdges(row);
  return {
    index,
    start,
    ...(stretchedEnd && { stretchedEnd }),
    ...(end && { end }),
    ...(measured.length > 0 && { measured }),
  };
}
