import type { Catalogue } from '../exercises/index.ts';
import type { Review } from '../review/index.ts';
import { formatClock } from '../time/index.ts';
import { flagRows } from './flagRows.ts';
import { sheetLanguage } from './sheetLanguage.ts';

const header = ['exercise', 'clip', 'rep', 'time', 'frame', 'criterion', 'weight', 'seen', 'note', 'cue'] as const;

/** Spreadsheets run cells that begin so as formulas; an apostrophe in front makes them text (common practice). */
const harmless = (cell: string): string => (/^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell);

/** RFC 4180, section 2, rules 5 to 7: quotes round cells that hold a comma, a quote or a line end; quotes doubled. */
const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

const record = (cells: readonly string[]): string =>
  `${cells.map((cell) => quoted(harmless(cell.toWellFormed()))).join(',')}\r\n`;

/**
 * All flags as CSV (RFC 4180): a header, one record a flag, in the order of clips and times. Reps are separated by
 * spaces, "set" is the whole set; a time or a frame that isn't known is an empty cell.
 */
export function sheetCsv(review: Review, catalogue: Catalogue): string {
  const { weightText } = sheetLanguage(catalogue.language ?? 'en');
  const records = flagRows(review, catalogue).map((row) =>
    record([
      row.exercise,
      row.clipName,
      row.reps?.join(' ') ?? 'set',
      row.us === null ? '' : formatClock(row.us),
      row.frame === null ? '' : String(row.frame),
      row.criterionName,
      weightText(row.weight),
      row.seen,
      row.note,
      row.cue,
    ]),
  );
  return record(header) + records.join('');
}
