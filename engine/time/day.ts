import * as v from 'valibot';

/** Whether a text of the form 2026-10-18 names a day that the calendar has: neither 30 February nor 31 June. */
export function isDay(written: string): boolean {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(written) ? new Date(`${written}T00:00:00Z`) : null;
  // A day that the month does not have rolls over into the next.
  return day?.toJSON()?.startsWith(written) === true;
}

/** A day of the calendar, written as 2026-10-18. */
export const daySchema = v.pipe(v.string(), v.isoDate(), v.check(isDay, 'the calendar has no such day'));
