import { cautionsDue } from '../cautions/cautionsDue.ts';
import { sentence } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { SetMeasurement } from '../motion/measurement.ts';
import { loadIn } from '../review/load.ts';
import { clipOf, entryOfClip } from '../review/parts.ts';
import type { Review } from '../review/review.ts';
import { clipLoadKg } from '../review/work.ts';
import { formatClock } from '../time/writtenTime.ts';
import { cautionWording, sayerOf } from '../wording/wordings.ts';
import { flagRows } from './flagRows.ts';
import { measuredClips } from './measureRows.ts';
import { sheetLanguage } from './sheetLanguage.ts';

const header = [
  ...['exercise', 'clip', 'rep', 'time', 'frame', 'criterion', 'severity', 'seen', 'note', 'cue'],
  ...['faultId', 'faultName', 'cautions'],
];

/**
 * All flags as CSV (RFC 4180): a header, one record a flag, in the order of clips and times. Reps are separated by
 * spaces, "set" is the whole set; the severity is its word in the sheet's language. A time or a frame that isn't known is an
 * empty cell, and so is the fault of praise or of a remark without one. The first record holds the session's cautions and the
 * closing line, which belong beside whatever is shown of the table.
 */
export function sheetCsv(review: Review, catalogue: Catalogue): string {
  const { language, say } = sheetLanguage(catalogue.language ?? 'en');
  const heed = cautionsDue(review, catalogue).map(({ topic, text }) => `${sentence(topic)} ${text}`);
  const cautions = [...heed, sayerOf(cautionWording, language)('closing')].join(' ');
  const records = flagRows(review, catalogue).map((row, at) =>
    csvRecord([
      row.exercise,
      row.clipName,
      row.reps?.join(' ') ?? 'set',
      row.us === null ? null : formatClock(row.us),
      row.frame,
      row.criterionName,
      row.severity === null ? say('plainNote') : say('severityWord', { severity: row.severity }),
      row.seen,
      row.note,
      row.cue,
      row.faultId,
      row.fault?.name ?? null,
      at === 0 ? cautions : null,
    ]),
  );
  return csvRecord(header) + records.join('');
}

/** The numbers of a rep that come with a ±: each has a column of its own and one for its ±. */
const measured = [
  ['eccentricS', 'eccentricPlusMinusS'],
  ['pauseStretchedS', 'pauseStretchedPlusMinusS'],
  ['concentricS', 'concentricPlusMinusS'],
  ['pauseShortenedS', 'pauseShortenedPlusMinusS'],
  ['romM', 'romPlusMinusM'],
  ['driftForwardM', 'driftForwardPlusMinusM'],
  ['driftBackM', 'driftBackPlusMinusM'],
  ['meanConcentricMps', 'meanConcentricPlusMinusMps'],
  ['peakConcentricMps', 'peakConcentricPlusMinusMps'],
  ['depthM', 'depthPlusMinusM'],
] as const;

/**
 * What was measured, as CSV (RFC 4180): a header, one record a rep. Seconds, metres, metres a second; the load in the units
 * of the trainee, as its heading says (`loadKg`, `loadLb`); `startS` and `endS` are media time, durations lifting time;
 * `depthM` is the hip crease above the top of the knee; `follows` is what was followed, `scaleFrom` where lengths come
 * from (`body`: they are about). A measure that a rep lacks is an empty cell.
 */
export function measuresCsv(
  review: Review,
  catalogue: Catalogue,
  measures: ReadonlyMap<string, SetMeasurement>,
): string {
  const { units } = review.trainee;
  const loadHeading = { kg: 'loadKg', lb: 'loadLb' }[units];
  const header = csvRecord([
    'exercise',
    'clip',
    'rep',
    'startS',
    'endS',
    ...measured.flat(),
    'depth',
    loadHeading,
    'follows',
    'scaleFrom',
  ]);
  const records = measuredClips(review, catalogue, measures).flatMap(
    ({ clip, exercise, clipName, follows, scaleFrom, reps }) => {
      const loadKg = loadOfClipKg(review, clip);
      return reps.map((rep) =>
        csvRecord([
          exercise,
          clipName,
          rep.rep,
          rep.startS,
          rep.endS,
          ...measured.flatMap(([name]) => [rep[name]?.value ?? null, rep[name]?.plusMinus ?? null]),
          rep.depth,
          loadKg === undefined ? null : loadIn(units, loadKg),
          follows,
          scaleFrom,
        ]),
      );
    },
  );
  return header + records.join('');
}

function loadOfClipKg(review: Review, clipId: string): number | undefined {
  const entry = entryOfClip(review, clipId);
  const clip = entry && clipOf(entry, clipId);
  return entry && clip && clipLoadKg(entry, clip);
}

/** A cell: words, which must not run as a formula, or a number; null = empty. */
type CsvCell = string | number | null;

/** Spreadsheets run cells that begin so as formulas; an apostrophe in front makes them text (common practice). */
const harmless = (cell: string): string => (/^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell);

/** RFC 4180, section 2, rules 5 to 7: quotes around cells that hold a comma, a quote or a line end; quotes doubled. */
const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

function written(cell: CsvCell): string {
  if (cell === null) return '';
  return typeof cell === 'number' ? String(cell) : quoted(harmless(cell.toWellFormed()));
}

/** A record of a CSV file with its line end. Words can't run as formulas; numbers stay numbers, with a point. */
const csvRecord = (cells: readonly CsvCell[]): string => `${cells.map(written).join(',')}\r\n`;
