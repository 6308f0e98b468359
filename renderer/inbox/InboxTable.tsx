import { useMemo, useRef } from 'react';
import type { InboxFile } from '../../electron/contract/inbox.ts';
import { mutate } from '../bridge/mutate.ts';
import { useIsSelfReview } from '../state/mine.ts';
import { sayInbox } from '../words/sayInbox.ts';
import { CellPicker } from './CellPicker.tsx';
import { CellText } from './CellText.tsx';
import { choiceOf, type OptionSource, optionsFor, otherDay } from './cellOptions.ts';
import { InboxRow, type RowActs } from './InboxRow.tsx';
import { type ChoiceColumn, columnsFor, type InboxColumn } from './inboxColumns.ts';
import { moved, targets, toggled } from './inboxGrid.ts';
import type { PlacementNames } from './placementWords.ts';
import type { useInboxGrid } from './useInboxGrid.ts';

type InboxTableProps = {
  readonly files: readonly InboxFile[];
  readonly names: PlacementNames & Omit<OptionSource, 'files'>;
  readonly use: ReturnType<typeof useInboxGrid>;
  readonly onRemove: (arrivalIds: readonly string[]) => void;
};

/** The parts of a choice by the column that shows them. */
const partOf = { trainee: 'trainee', session: 'session', exercise: 'exercise', view: 'view', load: 'load' } as const;

const steps: Readonly<Record<string, { readonly rows?: number; readonly across?: number }>> = {
  ArrowDown: { rows: 1 },
  ArrowUp: { rows: -1 },
  PageDown: { rows: 10 },
  PageUp: { rows: -10 },
  ArrowRight: { across: 1 },
  ArrowLeft: { across: -1 },
  Home: { across: -9 },
  End: { across: 9 },
};

/** The clips of the inbox as cells that keys move through and typing changes, for one clip or all that are selected. */
export function InboxTable({ files, names, use, onRemove }: InboxTableProps) {
  const { grid, setGrid, editing, setEditing, shape, table, onToggle, onCell } = use;
  const columns = columnsFor(useIsSelfReview());
  const chosenIds = targets(
    grid,
    files.map(({ arrivalId }) => arrivalId),
  );
  const count = chosenIds.length;
  const chosenFiles = files.filter(({ arrivalId }) => chosenIds.includes(arrivalId));

  const choose = (column: ChoiceColumn, value: string): void => {
    if (column === 'session' && value === otherDay) return setEditing({ typed: '', mode: 'date' });
    setEditing(null);
    if (count > 0) void mutate('inbox.choose', { arrivalIds: [...chosenIds], choice: choiceOf(column, value) });
  };
  const forget = (column: InboxColumn): void => {
    if (count === 0) return;
    if (column === 'file') onRemove(chosenIds);
    else void mutate('inbox.choose', { arrivalIds: [...chosenIds], forget: [partOf[column]] });
  };
  const begin = (typed: string): void => {
    if (grid.cursor !== null && grid.cursor.column !== 'file') setEditing({ typed, mode: 'list' });
  };

  const onKeyDown = (event: React.KeyboardEvent): void => {
    if (editing !== null || (event.target as Element).closest('button') !== null) return;
    const { key } = event;
    const mod = event.ctrlKey || event.metaKey;
    const step = steps[key];
    if (step !== undefined && !event.altKey) {
      const extend = event.shiftKey && step.rows !== undefined;
      const rows = mod && step.rows !== undefined ? step.rows * files.length : step.rows;
      setGrid((now) => moved(now, shape.current, { ...step, ...(rows !== undefined && { rows }), extend }));
    } else if (mod && key.toLowerCase() === 'a') {
      setGrid((now) => ({ ...now, selected: new Set(shape.current.ids) }));
    } else if (mod || event.altKey) return;
    else if (key === ' ') setGrid((now) => (now.cursor === null ? now : toggled(now, now.cursor.id)));
    else if (key === 'Escape') setGrid((now) => ({ ...now, selected: new Set(), anchor: null }));
    else if (key === 'Enter' || key === 'F2') begin('');
    else if (key === 'Delete' || key === 'Backspace') forget(grid.cursor?.column ?? 'file');
    else if (/^[\p{L}\p{N}]$/u.test(key) && grid.cursor?.column !== 'file') begin(key);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  const editor = (column: ChoiceColumn): React.ReactNode => {
    if (editing === null) return null;
    const label = sayInbox('chosenFor', { what: sayInbox(column), count });
    const cancel = (): void => setEditing(null);
    if (column === 'load' || editing.mode === 'date') {
      const onDone = (text: string): void => {
        if (column === 'load') choose(column, text);
        else if (text !== '') choose('session', `day:${text}`);
      };
      return (
        <CellText
          key={editing.mode}
          label={label}
          typed={editing.mode === 'date' ? (chosenFiles[0]?.placement.session?.value.date ?? '') : editing.typed}
          kind={column === 'load' ? 'number' : 'date'}
          onDone={onDone}
          onCancel={cancel}
        />
      );
    }
    return (
      <CellPicker
        label={label}
        typed={editing.typed}
        optionsFor={(typed) => optionsFor(column, { ...names, files: chosenFiles }, typed)}
        onChoose={(value) => choose(column, value)}
        onCancel={cancel}
      />
    );
  };
  // Rows are drawn anew only where their own cells changed, so what they call has to stay the same.
  const latestEditor = useRef(editor);
  latestEditor.current = editor;
  const acts = useMemo(
    (): RowActs => ({ onCell, onToggle, editor: (column) => latestEditor.current(column) }),
    [onCell, onToggle],
  );
  const allSelected = files.length > 0 && grid.selected.size === files.length;

  return (
    <table
      ref={table}
      role="grid"
      className="session-table inbox-table"
      aria-label={sayInbox('clips')}
      aria-multiselectable="true"
      onKeyDown={onKeyDown}
    >
      <thead>
        <tr>
          <th scope="col" className="tick-column">
            <input
              type="checkbox"
              aria-label={sayInbox('selectAll')}
              checked={allSelected}
              onChange={() =>
                setGrid((now) => ({ ...now, anchor: null, selected: new Set(allSelected ? [] : shape.current.ids) }))
              }
            />
          </th>
          <th scope="col">{sayInbox('file')}</th>
          <th scope="col" className="end length-column">
            {sayInbox('length')}
          </th>
          {columns
            .filter((column) => column !== 'file')
            .map((column) => (
              <th key={column} scope="col" className={column === 'load' ? 'end load-column' : `${column}-column`}>
                {sayInbox(column)}
              </th>
            ))}
          <th scope="col" className="inbox-state-column">
            {sayInbox('state')}
          </th>
        </tr>
      </thead>
      <tbody>
        {files.map((file) => {
          const at = grid.cursor?.id === file.arrivalId ? grid.cursor.column : null;
          const isEditing = at !== null && editing !== null;
          return (
            <InboxRow
              key={file.arrivalId}
              file={file}
              columns={columns}
              names={names}
              at={at}
              editing={isEditing}
              // A cell that is being changed is drawn with the table.
              acts={isEditing ? { ...acts } : acts}
              selected={grid.selected.has(file.arrivalId)}
            />
          );
        })}
      </tbody>
    </table>
  );
}
