import type { InboxColumn } from './inboxColumns.ts';

export type Cursor = { readonly id: string; readonly column: InboxColumn };

/** Where the cursor is and which rows are selected; `anchor`: where a range began. */
export type Grid = {
  readonly cursor: Cursor | null;
  readonly anchor: string | null;
  readonly selected: ReadonlySet<string>;
};

export const noGrid: Grid = { cursor: null, anchor: null, selected: new Set() };

/** What the rows and columns are, in order. */
export type Shape = { readonly ids: readonly string[]; readonly columns: readonly InboxColumn[] };

const clamped = (index: number, length: number): number => Math.min(Math.max(0, index), length - 1);

/** The cursor moved by rows and columns, as far as there are any; `extend` selects the rows it passes. */
export function moved(
  grid: Grid,
  { ids, columns }: Shape,
  {
    rows = 0,
    across = 0,
    extend = false,
  }: { readonly rows?: number; readonly across?: number; readonly extend?: boolean },
): Grid {
  if (ids.length === 0) return grid;
  const row = clamped(Math.max(0, ids.indexOf(grid.cursor?.id ?? '')) + rows, ids.length);
  const column = clamped(Math.max(0, columns.indexOf(grid.cursor?.column ?? 'file')) + across, columns.length);
  const cursor = { id: ids[row] ?? '', column: columns[column] ?? 'file' };
  if (!extend) return { ...grid, cursor, anchor: null };
  const anchor = grid.anchor ?? grid.cursor?.id ?? cursor.id;
  return { cursor, anchor, selected: range(ids, anchor, cursor.id) };
}

/** A row selected with all between it and the anchor. */
export function rangeTo(grid: Grid, { ids }: Shape, cursor: Cursor): Grid {
  const anchor = grid.anchor ?? grid.cursor?.id ?? cursor.id;
  return { cursor, anchor, selected: range(ids, anchor, cursor.id) };
}

function range(ids: readonly string[], from: string, to: string): ReadonlySet<string> {
  const [first, last] = [ids.indexOf(from), ids.indexOf(to)].toSorted((a, b) => a - b);
  return new Set(ids.slice(Math.max(0, first ?? 0), (last ?? 0) + 1));
}

/** A row taken into the selection, or out of it. */
export function toggled(grid: Grid, id: string): Grid {
  const selected = new Set(grid.selected);
  if (!selected.delete(id)) selected.add(id);
  return { ...grid, anchor: null, selected };
}

/** The cursor set on a cell; a selection that the cell's row isn't in is over. */
export const placed = (grid: Grid, cursor: Cursor): Grid => ({
  cursor,
  anchor: null,
  selected: grid.selected.has(cursor.id) ? grid.selected : new Set(),
});

/** The rows that a change counts for: the selection where the cursor is in it, else the cursor's row. */
export function targets({ cursor, selected }: Grid, ids: readonly string[]): readonly string[] {
  if (cursor === null) return [];
  return selected.has(cursor.id) ? ids.filter((id) => selected.has(id)) : [cursor.id];
}

/** The grid once rows have come or gone: what is gone is selected no more, and the cursor goes to the row in its place. */
export function kept(grid: Grid, before: readonly string[], ids: readonly string[]): Grid {
  const there = new Set(ids);
  const selected = new Set([...grid.selected].filter((id) => there.has(id)));
  if (grid.cursor === null || there.has(grid.cursor.id)) return { ...grid, selected };
  const next = ids[clamped(before.indexOf(grid.cursor.id), ids.length)];
  return { cursor: next === undefined ? null : { ...grid.cursor, id: next }, anchor: null, selected };
}
