import { useCallback, useEffect, useRef, useState } from 'react';
import type { InboxFile } from '../../electron/contract/inbox.ts';
import { firstGap, type InboxColumn } from './inboxColumns.ts';
import { type Cursor, type Grid, kept, noGrid, placed, rangeTo, type Shape, toggled } from './inboxGrid.ts';

/** What is being changed: the column of the cursor, and what was typed to begin. */
export type Editing = { readonly typed: string; readonly mode: 'list' | 'date' };

/**
 * Cursor, selection and the cell that is being changed, in step with the files there are. The cursor begins on the first
 * gap, and its cell has the focus.
 */
export function useInboxGrid(files: readonly InboxFile[], columns: readonly InboxColumn[]) {
  const [grid, setGrid] = useState<Grid>(noGrid);
  const [editing, setEditing] = useState<Editing | null>(null);
  const shape = useRef<Shape>({ ids: [], columns });
  const table = useRef<HTMLTableElement>(null);
  const hadCursor = useRef(false);

  useEffect(() => {
    const ids = files.map(({ arrivalId }) => arrivalId);
    const before = shape.current.ids;
    shape.current = { ids, columns };
    setGrid((now) => (now.cursor === null ? { ...now, cursor: firstGap(files) } : kept(now, before, ids)));
  }, [files, columns]);
  const { cursor } = grid;
  useEffect(() => {
    if (cursor === null || editing !== null) return;
    const active = document.activeElement;
    const isFree = active === document.body || active === null || table.current?.contains(active) === true;
    // The button that took the first clips in gives the focus to them; later, a button that was pressed keeps it.
    const isFirst = !hadCursor.current && active?.closest('dialog') === null;
    hadCursor.current = true;
    if (isFree || isFirst)
      table.current?.querySelector<HTMLElement>(`[data-cell="${cursor.id} ${cursor.column}"]`)?.focus();
  }, [cursor, editing]);

  const onToggle = useCallback(
    (id: string): void =>
      setGrid((now) => ({ ...toggled(now, id), cursor: { id, column: now.cursor?.column ?? 'exercise' } })),
    [],
  );
  const onCell = useCallback((event: React.MouseEvent, id: string, column: InboxColumn): void => {
    const at: Cursor = { id, column };
    if (event.shiftKey) setGrid((now) => rangeTo(now, shape.current, at));
    else if (event.ctrlKey || event.metaKey) setGrid((now) => ({ ...toggled(now, id), cursor: at }));
    else {
      setGrid((now) => placed(now, at));
      setEditing((now) => (column === 'file' ? null : (now ?? { typed: '', mode: 'list' })));
    }
  }, []);
  return { grid, setGrid, editing, setEditing, shape, table, onToggle, onCell };
}
