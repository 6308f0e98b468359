import type { Catalogue } from '../exercises/catalogue.ts';
import type { SetMeasurement } from '../motion/measurement.ts';
import type { Review } from '../review/review.ts';
import { csvRecord } from './csvRecord.ts';
import { measuredClips } from './measureRows.ts';

/** The numbers of a rep that come with a ±: each has a column of its own and one for its ±. */
const measured = [
  ['eccentricS', 'eccentricPlusMinusS'],
  ['longPauseS', 'longPausePlusMinusS'],
  ['concentricS', 'concentricPlusMinusS'],
  ['shortPauseS', 'shortPausePlusMinusS'],
  ['romM', 'romPlusMinusM'],
  ['driftForwardM', 'driftForwardPlusMinusM'],
  ['driftBackM', 'driftBackPlusMinusM'],
  ['meanConcentricMps', 'meanConcentricPlusMinusMps'],
  ['peakConcentricMps', 'peakConcentricPlusMinusMps'],
  ['depthM', 'depthPlusMinusM'],
] as const;

/**
 * What was measured, as CSV (RFC 4180): a header, one record a rep. Seconds, metres, metres a second; `startS` and
 * `endS` are media time, durations lifting time; `depthM` is the hip crease above the top of the knee. What a rep has
 * none of is an empty cell.
 */
export function measuresCsv(
  review: Review,
  catalogue: Catalogue,
  measures: ReadonlyMap<string, SetMeasurement>,
): string {
  const header = csvRecord(['exercise', 'clip', 'rep', 'startS', 'endS', ...measured.flat(), 'depth']);
  const records = measuredClips(review, catalogue, measures).flatMap(({ exercise, clipName, reps }) =>
    reps.map((rep) =>
      csvRecord([
        exercise,
        clipName,
        rep.rep,
        rep.startS,
        rep.endS,
        ...measured.flatMap(([name]) => [rep[name]?.value ?? null, rep[name]?.plusMinus ?? null]),
        rep.depth,
      ]),
    ),
  );
  return header + records.join('');
}
