import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 18;

it('leaves footage as it is and gives it an inbox, empty at first, that goes with its footage', () => {
  const steps = readMigrations(appFolder).slice(0, version);
  const database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(
    `INSERT INTO footage (id, container, codec, width, height, rotation_deg, shown_width, shown_height, frames, time_base_numerator,
      time_base_denominator, duration_us, constant_rate, mean_fps, real_time_factor, has_audio, proxy_reason, filmstrip_pictures)
    VALUES ('film', '', 'h264', 2, 2, 0, 2, 2, 2, 1, 15360, 66667, 1, 30, 1, 0, '', 0)`,
  );
  const before = database.prepare('SELECT * FROM footage').all();
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
  expect(database.prepare('SELECT * FROM footage').all()).toEqual(before);
  expect(database.prepare('SELECT count(*) AS files FROM arrival').get()).toEqual({ files: 0 });
  const arrive = database.prepare(
    `INSERT INTO arrival (id, batch_id, path, folders, size_bytes, modified_ms, state, message, footage_id, recorded_at, recorded_day,
      recorded_by, choice, arrived_at)
    VALUES (?, 'b', '/films/a.mov', '[]', 9, 1, 'read', '', 'film', '2026-11-28T17:00:00.000Z', '2026-11-28', ?, '{}', '')`,
  );
  arrive.run('one', 'film');
  expect(() => arrive.run('two', 'guess')).toThrow(/CHECK/);
  database.exec("DELETE FROM footage WHERE id = 'film'");
  expect(database.prepare('SELECT count(*) AS files FROM arrival').get()).toEqual({ files: 0 });
  database.close();
});
