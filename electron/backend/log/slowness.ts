import { observeQueries } from '../store/connection.ts';
import type { Library } from '../store/library.ts';
import type { Log } from './log.ts';

// Apart from the log itself, which the window's host writes too, without a database.
const slowQueryMs = 40;
const slowRequestMs = 100;

/** Logs every query that takes longer than it should, by its text; what it was asked with stays out. */
export function logSlowQueries({ reading, writing }: Pick<Library, 'reading' | 'writing'>, log: Log): void {
  for (const connection of [reading, writing]) {
    observeQueries(connection, ({ sql, tookMs }) => {
      if (tookMs > slowQueryMs) log.warn('slow query', { sql: sql.replaceAll(/\s+/g, ' '), ms: Math.round(tookMs) });
    });
  }
}

/** Logs a request that took longer than it should, by its name. */
export function logIfSlow(log: Log, name: string, tookMs: number): void {
  if (tookMs > slowRequestMs) log.warn('slow request', { name, ms: Math.round(tookMs) });
}
