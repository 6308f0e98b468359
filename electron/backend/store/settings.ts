import * as v from 'valibot';
import { type Settings, settingsSchema } from '../../contract/settings.ts';
import { all, type Reading, run, type Writing } from './connection.ts';
import { agreesWithDigest, listDiffering, takeForSound } from './rowDigests.ts';

type SettingRow = { readonly name: string; readonly value: string };

const storedRows = (reading: Reading): SettingRow[] => all<SettingRow>(reading, 'SELECT name, value FROM setting');

const isSound = (reading: Reading, { name }: SettingRow): boolean => agreesWithDigest(reading, 'setting', name);

/** Whether a setting was changed on the disk by a fault: its usual value applies until it is set again. */
export const hasDamagedSettings = (reading: Reading): boolean => listDiffering(reading, ['setting']).length > 0;

/** What is set for the library. What is stored and can't be understood, or was changed on the disk by a fault, counts as not set. */
export function readSettings(reading: Reading): Settings {
  const rows = storedRows(reading).filter((row) => isSound(reading, row));
  const stored = new Map(rows.map(({ name, value }): [string, unknown] => [name, JSON.parse(value)]));
  const understood = Object.entries(settingsSchema.entries).flatMap(([name, schema]) => {
    const parsed = v.safeParse(schema, stored.get(name));
    return parsed.success ? [[name, parsed.output]] : [];
  });
  return v.parse(settingsSchema, Object.fromEntries(understood));
}

/** Stores what is named, each value whole; what the disk made of settings that differ is gone from then on. */
export function writeSettings(writing: Writing, change: Partial<Settings>): void {
  for (const { owner } of listDiffering(writing, ['setting'])) {
    run(writing, 'DELETE FROM setting WHERE name = ?', owner);
    takeForSound(writing, 'setting', owner);
  }
  for (const [name, value] of Object.entries(change)) {
    run(
      writing,
      'INSERT INTO setting (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
      name,
      JSON.stringify(value),
    );
  }
}
