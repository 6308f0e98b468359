/** A cell: words, which a spreadsheet must not take for a formula, or a number of ours; null = empty. */
export type CsvCell = string | number | null;

/** Spreadsheets run cells that begin so as formulas; an apostrophe in front makes them text (common practice). */
const harmless = (cell: string): string => (/^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell);

/** RFC 4180, section 2, rules 5 to 7: quotes round cells that hold a comma, a quote or a line end; quotes doubled. */
const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

function written(cell: CsvCell): string {
  if (cell === null) return '';
  return typeof cell === 'number' ? String(cell) : quoted(harmless(cell.toWellFormed()));
}

/** A record of a CSV file with its line end. Words can't run as formulas; numbers stay numbers, with a point. */
export const csvRecord = (cells: readonly CsvCell[]): string => `${cells.map(written).join(',')}\r\n`;
