import { InvalidArgumentError } from 'commander';

/** Parses a day given to an option, as 2026-10-18. Throws commander's own error for anything else. */
export function isoDate(written: string): string {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(written) ? new Date(`${written}T00:00:00Z`) : null;
  // A day that the month does not have would roll over into the next.
  if (day?.toJSON()?.startsWith(written) === true) return written;
  throw new InvalidArgumentError('A date looks like 2026-10-18.');
}
