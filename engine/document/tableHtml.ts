import type { Inline, Table } from './document.ts';
import { escapeHtml } from './escapeHtml.ts';
import { directionHtml, lineDirectionHtml, lineHtml, wordsHtml } from './inlineHtml.ts';
import { plainText } from './inlines.ts';

/** Words of more characters may be cut, so that one of them can't make a table wider than its page. */
const longestWord = 24;
/** Tables of more columns keep their width on narrow screens and are scrolled. */
const mostNarrowColumns = 4;

const isLong = (cell: readonly Inline[]): boolean =>
  plainText(cell)
    .split(/\s/)
    .some((word) => word.length > longestWord);

/** The bar is a picture of the number beside it, so it says nothing to those who hear the page. */
function barHtml(share: number | null): string {
  const filled = Math.round(1000 * Math.min(1, Math.max(0, share ?? 0))) / 10;
  const fill = share === null ? '' : `<rect class="fill" width="${filled}" height="8"></rect>`;
  const track = `<rect class="${share === null ? 'unknown' : 'track'}" width="100" height="8"></rect>`;
  return `<svg class="bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">${track}${fill}</svg>`;
}

function cellHtml(table: Table, at: { readonly row: number; readonly column: number }): string {
  const cell = table.rows[at.row]?.[at.column] ?? [];
  const hasBar = table.bars?.column === at.column;
  const words = hasBar
    ? `${barHtml(table.bars?.shares[at.row] ?? null)}<span>${lineHtml(cell)}</span>`
    : lineHtml(cell);
  const classes = [
    ...(table.columns[at.column]?.align === 'end' ? ['end'] : []),
    ...(isLong(cell) ? ['long'] : []),
    ...(hasBar ? ['bars'] : []),
  ];
  const looks = `${classes.length === 0 ? '' : ` class="${classes.join(' ')}"`}${lineDirectionHtml(cell)}`;
  return at.column === 0 ? `<th scope="row"${looks}>${words}</th>` : `<td${looks}>${words}</td>`;
}

/** A table as HTML, the first column heading its rows; it takes the focus, so that the keyboard can scroll it. */
export function tableHtml(table: Table): string {
  const heads = table.columns.map(
    ({ label, align }) => `<th scope="col"${align === 'end' ? ' class="end"' : ''}>${wordsHtml(label)}</th>`,
  );
  const rows = table.rows.map(
    (cells, row) => `<tr>${cells.map((_, column) => cellHtml(table, { row, column })).join('')}</tr>`,
  );
  const id = escapeHtml(table.id);
  const width = table.columns.length > mostNarrowColumns ? 'table wide' : 'table';
  return [
    `<div class="${width}" role="group" aria-labelledby="${id}-caption" tabindex="0">`,
    `<table id="${id}">`,
    `<caption id="${id}-caption"${directionHtml(table.caption)}>${wordsHtml(table.caption)}</caption>`,
    `<thead><tr>${heads.join('')}</tr></thead>`,
    '<tbody>',
    ...rows,
    '</tbody>',
    '</table>',
    '</div>',
  ].join('\n');
}
