import { type Inline, plainText, type Table } from './document.ts';
import { directionHtml, escapeHtml, lineDirectionHtml, lineHtml, wordsHtml } from './lineHtml.ts';

/** Words of more characters may be cut, so that one of them can't make a table wider than its page. */
const longestWord = 24;

/** Tables of more columns become cards on a tablet already. */
const mostNarrowColumns = 4;

const isLong = (cell: readonly Inline[]): boolean =>
  plainText(cell)
    .split(/\s/)
    .some((word) => word.length > longestWord);

/** Cells of more characters have lines of a card to themselves. */
const longestShort = 30;

const isProse = (cell: readonly Inline[]): boolean => plainText(cell).length > longestShort;

/** The bar is a picture of the number beside it, so it says nothing to those who hear the page. */
function barHtml(share: number | null): string {
  const filled = Math.round(1000 * Math.min(1, Math.max(0, share ?? 0))) / 10;
  const fill = share === null ? '' : `<rect class="fill" width="${filled}" height="8"></rect>`;
  const track = `<rect class="${share === null ? 'unknown' : 'track'}" width="100" height="8"></rect>`;
  return `<svg class="bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">${track}${fill}</svg>`;
}

function cellHtml(table: Table, at: { readonly row: number; readonly column: number }): string {
  const cell = table.rows[at.row]?.[at.column] ?? [];
  const column = table.columns[at.column];
  const bar = table.bars?.column === at.column ? barHtml(table.bars.shares[at.row] ?? null) : null;
  const classes = [
    ...(column?.align === 'end' ? ['end'] : []),
    ...(isLong(cell) ? ['long'] : []),
    ...(at.column > 0 && isProse(cell) ? ['prose'] : []),
    ...(bar === null ? [] : ['bars']),
  ];
  const looks = `${classes.length === 0 ? '' : ` class="${classes.join(' ')}"`}${lineDirectionHtml(cell)}`;
  const words = lineHtml(cell);
  const label = ` data-label="${escapeHtml(column?.label ?? '')}"`;
  // A number heads a card only together with what it counts.
  if (at.column === 0)
    return `<th scope="row"${column?.align === 'end' ? label : ''}${looks}>${bar ?? ''}${words}</th>`;
  // An empty cell holds nothing at all, so that a card can leave it out.
  const content = bar === null && words === '' ? '' : `${bar ?? ''}<span>${words}</span>`;
  return `<td${label}${looks}>${content}</td>`;
}

/**
 * A table as HTML, the first column heading its rows. On a narrow screen each row becomes a card with its labels, which
 * the style takes from the cells; everywhere else it stays a table, which takes the focus, so that the keyboard can scroll it.
 */
export function tableHtml(table: Table): string {
  const heads = table.columns.map(
    ({ label, align }) => `<th scope="col"${align === 'end' ? ' class="end"' : ''}>${wordsHtml(label)}</th>`,
  );
  const rows = table.rows.map(
    (cells, row) => `<tr>${cells.map((_, column) => cellHtml(table, { row, column })).join('')}</tr>`,
  );
  const id = escapeHtml(table.id);
  return [
    `<div class="${table.columns.length > mostNarrowColumns ? 'table wide' : 'table'}" role="group" aria-labelledby="${id}-caption" tabindex="0">`,
    `<table id="${id}"${table.bars === undefined ? '' : ' class="chart"'}>`,
    `<caption id="${id}-caption"${directionHtml(table.caption)}>${wordsHtml(table.caption)}</caption>`,
    `<thead><tr>${heads.join('')}</tr></thead>`,
    '<tbody>',
    ...rows,
    '</tbody>',
    '</table>',
    '</div>',
  ].join('\n');
}
