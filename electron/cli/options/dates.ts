import { InvalidArgumentError } from 'commander';

/** Parses a day given to an option, as 2026-10-18. Throws commander's own error for anything else. */
export function isoDate(written: string): string {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(written) ? new Date(`${written}T00:00:00Z`) : null;
  // A day that the month does not have would roll over into the next.
  if (day?.toJSON()?.startsWith(written) === true) return written;
  throw new InvalidArgumentError('A date looks like 2026-10-18.');
}

/** The day on the wall calendar where the person is, as 2026-10-18; `daysLater` days after `now`. */
export function localDay(now: Date, daysLater = 0): string {
  const day = new Date(now.getFullYear(), now.getMonth(), now.getDate() + daysLater);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}
