import { type KeyboardEvent, useRef, useState } from 'react';
import type { RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';
import type { MeasuresMessageId } from '../../../engine/wording/english/desk/measures.ts';
import { decimal, figureWords, inPercent } from '../../base/measureWords.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { goToSeconds } from '../commands/measuring.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { cellsOfRep, type MeasureCell, type MeasureColumn, measureColumns } from './repCells.ts';
import type { TempoToMeet } from './tempoTarget.ts';

type MeasureTableProps = {
  readonly measurement: SetMeasurement;
  readonly columns: readonly MeasureColumn[];
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

/** What was measured, a column a rep, so that it fits beside the picture; arrows move over it, Enter or a click goes to the moment of a measure. */
export function MeasureTable({ measurement, columns: measures, tempo, current }: MeasureTableProps) {
  const context = useReview();
  const { reps } = measurement;
  const [focused, setFocused] = useState<GridIndex>({ row: 0, column: 0 });
  const table = useRef<HTMLTableElement>(null);
  const cellsOf = reps.map((rep) => cellsOfRep(rep, measurement, tempo));
  const rows = measures.map((measure) => ({
    measure,
    cells: cellsOf.map((cells) => cells[measureColumns.indexOf(measure)]),
  }));
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
        column: within(reps.length, at.column + by.column),
      });
    } else if (event.key !== 'Enter') return;
    else if (cell.kind !== 'none') goToSeconds(context, cell.atS);
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div className="measure-scroll">
      <table className="measure-table" role="grid" aria-label={sayMeasures('table')} ref={table}>
        <thead>
          <tr>
            <th scope="col">{sayMeasures('rep')}</th>
            {reps.map((rep) => (
              <RepHead key={rep.index} rep={rep} current={rep.index === current} />
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ measure, cells }, row) => (
            <tr key={measure.id}>
              <MeasureHead measure={measure} tempo={tempo} />
              {cells.map((cell, column) =>
                cell === undefined ? null : (
                  <td
                    key={reps[column]?.index}
                    role="gridcell"
                    data-kind={cell.kind}
                    data-measure={measure.id}
                    data-current={reps[column]?.index === current}
                    data-row={row}
                    data-column={column}
                    tabIndex={focused.row === row && focused.column === column ? 0 : -1}
                    title={hintOf(cell)}
                    onClick={() => {
                      focusOn({ row, column });
                      if (cell.kind !== 'none') goToSeconds(context, cell.atS);
                    }}
                    onKeyDown={(event) => onKeyDown(event, { row, column }, cell)}
                  >
                    <CellWords cell={cell} />
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
      <SetSummaryLine measurement={measurement} />
    </div>
  );
}

/** What a cell has no room for. */
function hintOf(cell: MeasureCell): string | undefined {
  if (cell.kind === 'none') return cell.why;
  return cell.kind === 'words' && cell.inShort !== undefined ? cell.words : undefined;
}

function MeasureHead({ measure, tempo }: { readonly measure: MeasureColumn; readonly tempo: TempoToMeet | null }) {
  const asked = measure.id === 'tempo' && tempo !== null;
  return (
    <th scope="row">
      {sayMeasures(measure.id)} {measure.unit !== '' && <span className="measure-unit">{measure.unit}</span>}
      {asked && (
        <span className="measure-unit">
          {tempo.from === 'plan' ? sayMeasures('plan', { tempo: tempo.words }) : tempo.words}
        </span>
      )}
    </th>
  );
}

function RepHead({ rep, current }: { readonly rep: RepMeasurement; readonly current: boolean }) {
  const byHand = rep.manualEdges.map((edge) => sayMeasures(edge)).join(', ');
  return (
    <th scope="col" data-current={current}>
      {rep.index}
      {byHand !== '' && (
        <span className="measure-unit" title={sayMeasures('setByHand', { edges: byHand })}>
          {sayMeasures('byHand')}
          <span className="visually-hidden">: {byHand}</span>
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
      if (cell.inShort === undefined) return cell.words;
      return (
        <>
          <span aria-hidden="true">{cell.inShort}</span>
          <span className="visually-hidden">{cell.words}</span>
        </>
      );
    case 'none':
      return (
        <>
          <span aria-hidden="true">—</span>
          <span className="visually-hidden">{sayMeasures('notKnown', { why: cell.why })}</span>
        </>
      );
  }
}

const withUnit = (figure: string, unit: string): string => sayMeasures('withUnit', { figure, unit });

/** What the set has beyond its reps. */
function SetSummaryLine({ measurement }: { readonly measurement: SetMeasurement }) {
  const { speedLossPct, romSpreadM, eccentricSpreadS } = measurement.set;
  const facts: readonly (readonly [MeasuresMessageId, string | null])[] = [
    ['speedLoss', speedLossPct === null ? null : withUnit(figureWords(inPercent(speedLossPct)), '%')],
    ['rangeSpread', romSpreadM === null ? null : withUnit(decimal(romSpreadM * 100, 1), 'cm')],
    ['eccentricSpread', eccentricSpreadS === null ? null : withUnit(decimal(eccentricSpreadS, 2), 's')],
  ];
  return (
    <dl className="set-summary" aria-label={sayMeasures('wholeSet')}>
      {facts.map(([name, words]) => (
        <div key={name}>
          <dt>{sayMeasures(name)}</dt>
          <dd title={words === null ? sayMeasures('needsTwoReps') : undefined}>
            {words ?? (
              <>
                <span aria-hidden="true">—</span>
                <span className="visually-hidden">{sayMeasures('notKnown', { why: sayMeasures('needsTwoReps') })}</span>
              </>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
