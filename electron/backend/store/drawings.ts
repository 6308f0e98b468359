import * as v from 'valibot';
import { type Drawing, type Drawn, drawnSchema } from '../../../engine/review/drawings/drawing.ts';
import type { Row } from './changes.ts';
import { momentOf } from './columns.ts';
import { all, first, type Reading } from './connection.ts';

export type DrawingRow = Row & {
  readonly id: string;
  readonly clip_id: string;
  readonly ordinal: number;
  readonly shape: string;
  readonly points: string;
  readonly text: string | null;
};

/** A clip's drawings in the order they were drawn. */
export function listDrawings(reading: Reading, clipId: string): DrawingRow[] {
  return all<DrawingRow>(reading, 'SELECT * FROM drawing WHERE clip_id = ? ORDER BY ordinal, id', clipId);
}

/** One drawing, or undefined. */
export function findDrawing(reading: Reading, drawingId: string): DrawingRow | undefined {
  return first<DrawingRow>(reading, 'SELECT * FROM drawing WHERE id = ?', drawingId);
}

/** The place in line for a clip's next drawing. */
export function nextDrawingOrdinal(reading: Reading, clipId: string): number {
  const sql = 'SELECT coalesce(max(ordinal), 0) + 1 AS next FROM drawing WHERE clip_id = ?';
  return first<{ next: number }>(reading, sql, clipId)?.next ?? 1;
}

/** The columns of a shape. */
export function drawnColumns(drawn: Drawn): Row {
  return {
    shape: drawn.shape,
    points: JSON.stringify(drawn.points),
    text: drawn.shape === 'text' ? drawn.text : null,
  };
}

/** A drawing as the review format has it. */
export function drawingOf(row: DrawingRow): Drawing {
  const from = momentOf(row, 'from');
  const to = momentOf(row, 'to');
  if (!from || !to) throw new Error(`Drawing ${row.id} has no time.`);
  const drawn = v.parse(drawnSchema, {
    shape: row.shape,
    points: JSON.parse(row.points),
    ...(row.text !== null && { text: row.text }),
  });
  return { id: row.id, ...drawn, from, to };
}
