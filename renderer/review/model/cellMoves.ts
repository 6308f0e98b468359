import type { CriterionId } from '../../../engine/rubric/rubric.ts';
import type { Column } from '../../state/cursorState.ts';
import { sameColumn } from './columns.ts';

export type CellMove = 'left' | 'right' | 'up' | 'down' | 'first' | 'last';
/** A cell of the scorecard, where the cursor can be. */
export type CursorCell = { readonly criterion: string; readonly column: Column };

const clamp = (index: number, length: number): number => Math.min(Math.max(0, index), length - 1);

/** Where a move leads; the card's edges stop it. null on an empty card. */
export function moveCell(
  criteria: readonly string[],
  columns: readonly Column[],
  from: { readonly criterion: string | null; readonly column: Column | null },
  move: CellMove,
): CursorCell | null {
  const row = Math.max(0, criteria.indexOf(from.criterion ?? ''));
  const found = columns.findIndex((column) => sameColumn(column, from.column));
  const at = Math.max(0, found);
  const steps: Readonly<Record<CellMove, readonly [row: number, column: number]>> = {
    left: [row, at - 1],
    right: [row, at + 1],
    up: [row - 1, at],
    down: [row + 1, at],
    first: [row, columns.findIndex((column) => column.clipId === columns[at]?.clipId)],
    last: [row, columns.findLastIndex((column) => column.clipId === columns[at]?.clipId)],
  };
  const [toRow, toColumn] = steps[move];
  const criterion = criteria[clamp(toRow, criteria.length)];
  const column = columns[clamp(toColumn, columns.length)];
  return criterion === undefined || column === undefined ? null : { criterion, column };
}

const atLongEnd: ReadonlySet<CriterionId> = new Set(['depth', 'pauses']);

/** Whether a criterion is best judged where the rep turns round rather than where it starts. */
export const judgedAtLongEnd = (criterion: CriterionId): boolean => atLongEnd.has(criterion);
