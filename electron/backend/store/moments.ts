import type { Moment } from '../../../engine/time/moment.ts';
import type { Row } from './journaledTables.ts';

/** The moments a row can hold; each is three columns: `start_frame`, `start_ticks`, `start_seconds`. */
export type MomentName = 'start' | 'long_end' | 'end' | 'at' | 'from' | 'to';

/** The columns of a moment; all null when there is none. */
export function momentColumns(name: MomentName, moment: Moment | undefined): Row {
  const exact = moment && 'frame' in moment ? moment : undefined;
  const rough = moment && 'seconds' in moment ? moment : undefined;
  return {
    [`${name}_frame`]: exact?.frame ?? null,
    [`${name}_ticks`]: exact?.ticks ?? null,
    [`${name}_seconds`]: rough?.seconds ?? null,
  };
}

/** The moment that a row's columns hold, or undefined. */
export function momentOf(row: Row, name: MomentName): Moment | undefined {
  const frame = row[`${name}_frame`];
  const ticks = row[`${name}_ticks`];
  const seconds = row[`${name}_seconds`];
  if (typeof frame === 'number' && typeof ticks === 'number') return { frame, ticks };
  return typeof seconds === 'number' ? { seconds } : undefined;
}

/** The frame of a moment that a row holds, or undefined. */
export function frameOf(row: Row, name: MomentName): number | undefined {
  const frame = row[`${name}_frame`];
  return typeof frame === 'number' ? frame : undefined;
}
