import type { Reps } from '../../../engine/review/review.ts';
import type { Column } from '../../state/cursorState.ts';
import { sameColumn } from './columns.ts';
import type { Cell, ScorecardModel } from './scorecardModel.ts';

/** The columns that are looked at one by one: reps, or the whole set of a clip without any. */
export function columnsToSee({ clips, columns }: ScorecardModel): readonly Column[] {
  const bare = new Set(clips.filter((clip) => clip.reps.length === 0).map((clip) => clip.id));
  return columns.map(({ column }) => column).filter(({ clipId, rep }) => rep !== 'set' || bare.has(clipId));
}

const isSeen = ({ flags, fromSet, ticked, tickedBySet }: Cell): boolean =>
  flags.length > 0 || fromSet.length > 0 || ticked || tickedBySet;

/** The cells that count, rep by rep: those that the view of their clip can show, and those that were looked at anyway. */
export function cellsToSee(model: ScorecardModel): readonly Cell[] {
  return columnsToSee(model).flatMap((column) =>
    model.rows.flatMap((row) =>
      row.cells.filter((cell) => sameColumn(cell.column, column) && (cell.shown || isSeen(cell))),
    ),
  );
}

/** The cells nobody has looked at yet, rep by rep; what the view of a clip can't show is not among them. */
export const unseenCells = (model: ScorecardModel): readonly Cell[] =>
  cellsToSee(model).filter((cell) => !isSeen(cell));

/** The unseen cell after a cell of the card, going round at the end; null when all is seen. */
export function nextUnseen(
  model: ScorecardModel,
  from: { readonly criterion: string | null; readonly column: Column | null },
): Cell | null {
  const order = columnsToSee(model).flatMap((column) =>
    model.rows.map((row) => ({ column, criterion: row.criterion })),
  );
  const indexOf = (spot: { readonly criterion: string | null; readonly column: Column | null }): number =>
    order.findIndex((one) => one.criterion === spot.criterion && sameColumn(one.column, spot.column));
  const here = indexOf(from);
  const unseen = unseenCells(model);
  return unseen.find((cell) => indexOf(cell) > here) ?? unseen[0] ?? null;
}

/** Ticks that say "fine" of all that is not seen on a clip: the whole set where nothing of a criterion is marked yet. */
export function restOfClip(
  model: ScorecardModel,
  clipId: string,
): readonly { readonly criterion: string; readonly reps: Reps }[] {
  const cells = unseenCells(model).filter((cell) => cell.column.clipId === clipId);
  const all = columnsToSee(model).filter((column) => column.clipId === clipId).length;
  return [...Map.groupBy(cells, (cell) => cell.criterion)].map(([criterion, own]) => ({
    criterion,
    reps: own.length === all ? 'set' : own.flatMap((cell) => (cell.column.rep === 'set' ? [] : [cell.column.rep])),
  }));
}
