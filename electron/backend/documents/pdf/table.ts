import { strong, type Table, text } from '../../../../engine/document/document.ts';
import { barGap, barRoom, drawBar } from './bar.ts';
import {
  child,
  drawArtifact,
  drawContent,
  drawLines,
  type Element,
  type Flow,
  ink,
  type Prepared,
  rule,
} from './flow.ts';
import { extentOf, type Line, type Style, setLines } from './lines.ts';

const cellStyle: Style = { size: 9, leading: 12.5, face: 'regular', times: 'figures' };
const chartStyle: Style = { ...cellStyle, leading: 11 };

/** Rows of a chart stand closer: their bars part them well enough. */
const styleOf = ({ bars }: Table): Style => (bars === undefined ? cellStyle : chartStyle);
const headStyleOf = (table: Table): Style => ({ ...styleOf(table), face: 'strong' });
const captionStyle: Style = { size: 9, leading: 12.5, face: 'emphasis' };
const padding = { x: 5, y: 3.5, yWithBars: 0.9 };

/** Space above and below the text of a row. */
const paddingOf = ({ bars }: Table): number => (bars === undefined ? padding.y : padding.yWithBars);

/** The most of the table's width that a column asks for, so that one long cell leaves its neighbours some room. */
const largestWish = 0.9;

/** Widths that leave every word whole where that can be, and give the rest to the columns with more to say. */
function columnWidths(table: Table, flow: Flow): number[] {
  const extents = table.columns.map((column, index) => {
    const own = [
      extentOf([strong(column.label)], headStyleOf(table), flow.faces),
      ...table.rows.map((row) => extentOf(row[index] ?? [], styleOf(table), flow.faces)),
    ];
    // Room for rounding, so that the widest word is not cut.
    const bar = barRoom(table, index);
    const least = Math.max(...own.map((extent) => extent.least)) + bar.least + 2 * padding.x + 0.5;
    const wish = Math.max(...own.map((extent) => extent.natural)) + bar.wish + 2 * padding.x + 0.5;
    return { least, natural: Math.max(least, Math.min(flow.width * largestWish, wish)) };
  });
  const sum = (of: 'least' | 'natural') => extents.reduce((total, extent) => total + extent[of], 0);
  const spare = flow.width - sum('least');
  if (spare <= 0) return extents.map((extent) => (extent.least / sum('least')) * flow.width);
  const wanted = sum('natural') - sum('least');
  if (wanted <= 0) return extents.map((extent) => extent.least + spare / extents.length);
  return extents.map((extent) => extent.least + ((extent.natural - extent.least) / wanted) * spare);
}

const heightOf = (table: Table, row: Row): number =>
  Math.max(1, ...row.map((lines) => lines.length)) * styleOf(table).leading + 2 * paddingOf(table);

/** What a cell belongs to; where it has a bar, the share that fills it. */
type Cells = readonly {
  readonly element: Element;
  readonly tag: string;
  readonly bar?: { readonly share: number | null; readonly width: number };
}[];
type Row = readonly (readonly Line[])[];

/** Draws the cells of a row side by side: as content of `cells`, or as no content where there are none. */
function drawRow(
  flow: Flow,
  table: Table,
  widths: readonly number[],
  row: Row,
  style: Style,
  cells: Cells | null,
): void {
  let { left } = flow;
  row.forEach((lines, index) => {
    const width = widths[index] ?? 0;
    const inner = width - 2 * padding.x;
    const toEnd = table.columns[index]?.align === 'end';
    const at = {
      x: left + padding.x,
      y: flow.y() + paddingOf(table),
      colour: ink,
      shift: (line: Line) => (toEnd ? inner - line.width - line.left : 0),
    };
    left += width;
    const cell = cells?.[index];
    if (cell?.bar !== undefined) {
      drawBar(flow, cell.bar, { x: at.x, y: at.y + styleOf(table).leading / 2 });
    }
    if (lines.length === 0) return;
    if (cell === undefined) drawLines(flow, lines, style, at);
    else drawContent(flow, cell.element, cell.tag, lines, style, at);
  });
  flow.moveDown(heightOf(table, row));
}

const drawRule = (flow: Flow, colour: string, thickness: number): void =>
  drawArtifact(flow, 'Layout', (pdf) =>
    pdf.rect(flow.left, flow.y() - thickness / 2, flow.width, thickness).fill(colour),
  );

const withoutBar = ({ element, tag }: Cells[number]): Cells[number] => ({ element, tag });

/** A row over as many pages as it needs; `onNewPage` repeats the head. Rows that fit a page are not split. */
function drawLongRow(
  flow: Flow,
  table: Table,
  widths: readonly number[],
  row: Row,
  cells: Cells,
  onNewPage: () => void,
): void {
  let left = row;
  if (flow.room() < heightOf(table, left) && heightOf(table, left) < flow.pageHeight / 2) onNewPage();
  while (left.some((lines) => lines.length > 0)) {
    const rowsLeft = () => Math.floor((flow.room() - 2 * paddingOf(table)) / styleOf(table).leading + 1e-6);
    if (rowsLeft() < 1) onNewPage();
    // A head that fills the page alone leaves no room on the next one either.
    const fitting = Math.max(1, rowsLeft());
    const stretch = left.map((lines) => lines.slice(0, fitting));
    drawRow(flow, table, widths, stretch, styleOf(table), left === row ? cells : cells.map(withoutBar));
    left = left.map((lines) => lines.slice(fitting));
    if (left.some((lines) => lines.length > 0)) onNewPage();
  }
}

/** The bars of a table, each as wide as the widest figure of its column leaves room. */
function barsOf(table: Table, rows: readonly Row[], inner: (column: number) => number) {
  const { bars } = table;
  const widest = Math.max(0, ...rows.flatMap((row) => row[bars?.column ?? -1] ?? []).map((line) => line.width));
  return (row: number, column: number): Pick<Cells[number], 'bar'> =>
    bars?.column === column ? { bar: { share: bars.shares[row] ?? null, width: inner(column) - widest - barGap } } : {};
}

/** A table with its caption, its head repeated on every page, the first cell of each row heading it. */
export function prepareTable(flow: Flow, table: Table, captionColour: string): Prepared {
  const widths = columnWidths(table, flow);
  const inner = (index: number) => Math.max(1, (widths[index] ?? 0) - 2 * padding.x);
  const besideBar = (index: number) => Math.max(1, inner(index) - barRoom(table, index).least);
  const caption = setLines([text(table.caption)], captionStyle, flow.width, flow.faces);
  const head = table.columns.map((column, index) =>
    setLines([strong(column.label)], headStyleOf(table), inner(index), flow.faces),
  );
  const rows = table.rows.map((row) =>
    row.map((cell, index) => setLines(cell, styleOf(table), besideBar(index), flow.faces)),
  );
  const barOf = barsOf(table, rows, inner);
  const captionHeight = caption.length * captionStyle.leading + 3;
  const firstRow = rows[0] === undefined ? 0 : Math.min(heightOf(table, rows[0]), flow.pageHeight / 2);
  return {
    gap: 8,
    least: captionHeight + heightOf(table, head) + firstRow,
    draw: () => {
      const element = child(flow, flow.root, 'Table');
      const at = { x: flow.left, y: flow.y(), colour: captionColour };
      drawContent(flow, child(flow, element, 'Caption'), 'Caption', caption, captionStyle, at);
      flow.moveDown(captionHeight);
      const headRow = child(flow, element, 'TR');
      const heads = head.map(() => ({ element: child(flow, headRow, 'TH', { scope: 'Column' }), tag: 'TH' }));
      drawRow(flow, table, widths, head, headStyleOf(table), heads);
      drawRule(flow, ink, 1);
      const onNewPage = () => {
        flow.newPage();
        drawArtifact(flow, 'Pagination', () => drawRow(flow, table, widths, head, headStyleOf(table), null));
        drawRule(flow, ink, 1);
      };
      for (const [number, row] of rows.entries()) {
        const rowElement = child(flow, element, 'TR');
        const cells = row.map((_, index) => ({
          ...(index === 0
            ? { element: child(flow, rowElement, 'TH', { scope: 'Row' }), tag: 'TH' }
            : { element: child(flow, rowElement, 'TD'), tag: 'TD' }),
          ...barOf(number, index),
        }));
        drawLongRow(flow, table, widths, row, cells, onNewPage);
        drawRule(flow, rule, 0.6);
      }
      flow.moveDown(4);
    },
  };
}
