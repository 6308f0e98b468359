import { type KeyboardEvent, useRef, useState } from 'react';
import type { RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';
import { goToSeconds } from '../commands/measuring.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { decimal, figureWords, inPercent } from '../model/measureWords.ts';
import { cellsOfRep, type MeasureCell, type MeasureColumn, measureColumns } from './repCells.ts';
import type { TempoToMeet } from './tempoTarget.ts';

type MeasureTableProps = {
  readonly measurement: SetMeasurement;
  readonly tempo: TempoToMeet | null;
  /** The rep on screen; null outside of reps. */
  readonly current: number | null;
};

type GridIndex = { readonly row: number; readonly column: number };

const moves: Readonly<Record<string, GridIndex>> = {
  ArrowLeft: { row: 0, column: -1 },
  ArrowRight: { row: 0, column: 1 },
  ArrowUp: { row: -1, column: 0 },
  ArrowDown: { row: 1, column: 0 },
};

const within = (length: number, index: number): number => Math.min(Math.max(0, index), length - 1);

const edgeWords = { start: 'start', stretchedEnd: 'stretched end', end: 'end' } as const;

/** What was measured, a rep a row; arrows move over it, Enter or a click goes to the moment of a measure. */
export function MeasureTable({ measurement, tempo, current }: MeasureTableProps) {
  const context = useReview();
  const { reps } = measurement;
  const [focused, setFocused] = useState<GridIndex>({ row: 0, column: 0 });
  const table = useRef<HTMLTableElement>(null);
  const rows = reps.map((rep) => ({ rep, cells: cellsOfRep(rep, measurement, tempo) }));
  const focusOn = (to: GridIndex): void => {
    setFocused(to);
    const cell = table.current?.querySelector<HTMLElement>(`[data-row="${to.row}"][data-column="${to.column}"]`);
    cell?.focus({ preventScroll: true });
    cell?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  };
  const onKeyDown = (event: KeyboardEvent, at: GridIndex, cell: MeasureCell): void => {
    if (event.shiftKey || event.ctrlKey || event.metaKey || event.altKey) return;
    const by = moves[event.key];
    if (by !== undefined) {
      focusOn({
        row: within(rows.length, at.row + by.row),
        column: within(measureColumns.length, at.column + by.column),
      });
    } else if (event.key !== 'Enter') return;
    else if (cell.kind !== 'none') goToSeconds(context, cell.atS);
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div className="measure-scroll">
      <table className="measure-table" role="grid" aria-label="Measures of each rep" ref={table}>
        <thead>
          <tr>
            <th scope="col">Rep</th>
            {measureColumns.map((column) => (
              <ColumnHead key={column.id} column={column} tempo={tempo} />
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ rep, cells }, row) => (
            <tr key={rep.index} data-current={rep.index === current}>
              <RepHead rep={rep} />
              {cells.map((cell, column) => (
                <td
                  key={measureColumns[column]?.id}
                  role="gridcell"
                  data-kind={cell.kind}
                  data-measure={measureColumns[column]?.id}
                  data-row={row}
                  data-column={column}
                  tabIndex={focused.row === row && focused.column === column ? 0 : -1}
                  title={cell.kind === 'none' ? cell.why : undefined}
                  onClick={() => {
                    focusOn({ row, column });
                    if (cell.kind !== 'none') goToSeconds(context, cell.atS);
                  }}
                  onKeyDown={(event) => onKeyDown(event, { row, column }, cell)}
                >
                  <CellWords cell={cell} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <SetSummaryLine measurement={measurement} />
    </div>
  );
}

function ColumnHead({ column, tempo }: { readonly column: MeasureColumn; readonly tempo: TempoToMeet | null }) {
  const asked = column.id === 'tempo' && tempo !== null;
  return (
    <th scope="col">
      {column.name}
      {column.unit !== '' && <span className="measure-unit">{column.unit}</span>}
      {asked && <span className="measure-unit">{tempo.from === 'plan' ? `plan ${tempo.words}` : tempo.words}</span>}
    </th>
  );
}

function RepHead({ rep }: { readonly rep: RepMeasurement }) {
  const byHand = rep.manualEdges.map((edge) => edgeWords[edge]).join(', ');
  return (
    <th scope="row">
      {rep.index}
      {byHand !== '' && (
        <span className="measure-unit" title={`Set by hand: ${byHand}`}>
          by hand<span className="visually-hidden">: {byHand}</span>
        </span>
      )}
    </th>
  );
}

function CellWords({ cell }: { readonly cell: MeasureCell }) {
  switch (cell.kind) {
    case 'figure':
      return (
        <>
          {cell.figure.value} <span className="margin">± {cell.figure.margin}</span>
        </>
      );
    case 'words':
      return cell.words;
    case 'none':
      return (
        <>
          <span aria-hidden="true">—</span>
          <span className="visually-hidden">not known: {cell.why}</span>
        </>
      );
  }
}

/** What the set has beyond its reps. */
function SetSummaryLine({ measurement }: { readonly measurement: SetMeasurement }) {
  const { speedLossPct, romSpreadM, eccentricSpreadS } = measurement.set;
  const facts: readonly (readonly [string, string | null])[] = [
    ['Speed loss over the set', speedLossPct === null ? null : `${figureWords(inPercent(speedLossPct))} %`],
    ['Spread of the range', romSpreadM === null ? null : `${decimal(romSpreadM * 100, 1)} cm`],
    ['Spread of the eccentric', eccentricSpreadS === null ? null : `${decimal(eccentricSpreadS, 2)} s`],
  ];
  return (
    <dl className="set-summary" aria-label="The set as a whole">
      {facts.map(([name, words]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd title={words === null ? 'It takes two reps that were measured.' : undefined}>
            {words ?? (
              <>
                <span aria-hidden="true">—</span>
                <span className="visually-hidden">not known: it takes two reps that were measured</span>
              </>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
