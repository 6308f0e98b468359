import * as v from 'valibot';
import { type Settings, settingsSchema } from '../../contract/settings.ts';
import { all, type Reading, run, type Writing } from './connection.ts';

/** What is set for the library. What is stored and can't be understood counts as not set. */
export function readSettings(reading: Reading): Settings {
  const rows = all<{ name: string; value: string }>(reading, 'SELECT name, value FROM setting');
  const stored = new Map(rows.map(({ name, value }): [string, unknown] => [name, JSON.parse(value)]));
  const understood = Object.entries(settingsSchema.entries).flatMap(([name, schema]) => {
    const parsed = v.safeParse(schema, stored.get(name));
    return parsed.success ? [[name, parsed.output]] : [];
  });
  return v.parse(settingsSchema, Object.fromEntries(understood));
}

/** Stores what is named, each value whole. */
export function writeSettings(writing: Writing, change: Partial<Settings>): void {
  for (const [name, value] of Object.entries(change)) {
    run(
      writing,
      'INSERT INTO setting (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
      name,
      JSON.stringify(value),
    );
  }
}
