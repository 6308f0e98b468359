import { memo } from 'react';
import { arrivalAddress } from '../../electron/contract/addresses.ts';
import type { InboxFile } from '../../electron/contract/inbox.ts';
import { formatSecondsClock } from '../../engine/time/writtenTime.ts';
import { momentOf } from '../base/figures.ts';
import { sayInbox } from '../words/sayInbox.ts';
import { FileState } from './FileState.tsx';
import { type ChoiceColumn, hindranceOf, type InboxColumn } from './inboxColumns.ts';
import { type PlacementNames, sayGuess } from './placementWords.ts';

/** What a row asks of its table; the same functions for every row and every time. */
export type RowActs = {
  readonly onCell: (event: React.MouseEvent, id: string, column: InboxColumn) => void;
  readonly onToggle: (id: string) => void;
  /** What stands in a cell while it is changed. */
  readonly editor: (column: ChoiceColumn) => React.ReactNode;
};

type InboxRowProps = {
  readonly file: InboxFile;
  readonly columns: readonly InboxColumn[];
  readonly names: PlacementNames;
  /** The column of the cursor, where it is in this row. */
  readonly at: InboxColumn | null;
  readonly editing: boolean;
  readonly selected: boolean;
  readonly acts: RowActs;
};

/** One clip of the inbox, with a guess in each cell and what it rests on. */
export const InboxRow = memo(function InboxRow(props: InboxRowProps) {
  const { file, columns, names, at, editing, selected, acts } = props;
  const id = file.arrivalId;
  const hindrance = hindranceOf(file);
  const cell = (column: InboxColumn) => ({
    'data-cell': `${id} ${column}`,
    'data-column': column,
    'data-at': at === column,
    tabIndex: at === column ? 0 : -1,
    onClick: (event: React.MouseEvent) => acts.onCell(event, id, column),
  });
  return (
    <tr data-file={file.name} data-hindrance={hindrance ?? 'none'} aria-selected={selected}>
      <td>
        <input
          type="checkbox"
          tabIndex={-1}
          aria-label={sayInbox('select', { file: file.name })}
          checked={selected}
          onChange={() => acts.onToggle(id)}
        />
      </td>
      <th scope="row" {...cell('file')}>
        <span className="inbox-film">
          {file.hasPoster ? (
            <img src={arrivalAddress(id, 'poster')} alt="" loading="lazy" decoding="async" draggable={false} />
          ) : (
            <span className="inbox-no-picture" />
          )}
          <span className="inbox-two">
            <span className="inbox-name" title={file.name}>
              {file.name}
            </span>
            <span
              className="soft figure"
              title={sayInbox('filmedBy', { by: file.recordedBy, when: momentOf(file.recordedAt) })}
            >
              {momentOf(file.recordedAt)}
              {file.recordedBy === 'file' && ' *'}
            </span>
          </span>
        </span>
      </th>
      <td className="figure end">{file.durationUs === null ? '' : formatSecondsClock(file.durationUs)}</td>
      {columns
        .filter((column) => column !== 'file')
        .map((column) => {
          const guess = sayGuess(column, file, names);
          return (
            <td key={column} {...cell(column)} className={column === 'load' ? 'end' : undefined}>
              {editing && at === column ? (
                acts.editor(column)
              ) : (
                <span className="inbox-two" title={guess?.why}>
                  <span className={guess === null ? 'inbox-gap' : undefined}>
                    {guess?.value ?? (column === 'view' || column === 'load' ? '–' : sayInbox('missing'))}
                  </span>
                  {guess !== null && <span className="soft">{guess.basis}</span>}
                </span>
              )}
            </td>
          );
        })}
      <td className="inbox-state">
        <FileState file={file} hindrance={hindrance} />
      </td>
    </tr>
  );
});
