import type { Catalogue } from '../exercises/catalogue.ts';
import type { Review } from '../review/review.ts';
import { formatClock } from '../time/writtenTime.ts';
import { csvRecord } from './csvRecord.ts';
import { flagRows } from './flagRows.ts';
import { sheetLanguage } from './sheetLanguage.ts';

const header = ['exercise', 'clip', 'rep', 'time', 'frame', 'criterion', 'weight', 'seen', 'note', 'cue'] as const;

/**
 * All flags as CSV (RFC 4180): a header, one record a flag, in the order of clips and times. Reps are separated by
 * spaces, "set" is the whole set; a time or a frame that isn't known is an empty cell.
 */
export function sheetCsv(review: Review, catalogue: Catalogue): string {
  const { weightText } = sheetLanguage(catalogue.language ?? 'en');
  const records = flagRows(review, catalogue).map((row) =>
    csvRecord([
      row.exercise,
      row.clipName,
      row.reps?.join(' ') ?? 'set',
      row.us === null ? null : formatClock(row.us),
      row.frame,
      row.criterionName,
      weightText(row.weight),
      row.seen,
      row.note,
      row.cue,
    ]),
  );
  return csvRecord(header) + records.join('');
}
