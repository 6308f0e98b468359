import { InvalidArgumentError } from 'commander';
import { isDay } from '../../../engine/time/day.ts';

/** Parses a day given to an option, as 2026-10-18. Throws commander's own error for anything else. */
export function isoDate(written: string): string {
  if (isDay(written)) return written;
  throw new InvalidArgumentError('A date looks like 2026-10-18.');
}
