import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 26;

it('knows nothing yet of how the files of an older library lie', () => {
  const steps = readMigrations(appFolder).slice(0, version);
  const database = new Database(':memory:');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO footage (id, sha256, file, size_bytes, container, codec, width, height, rotation_deg, shown_width, shown_height, frames,
      time_base_numerator, time_base_denominator, duration_us, constant_rate, mean_fps, real_time_factor, has_audio, plays, proxy_reason,
      filmstrip_pictures)
    VALUES ('f', '${'a1'.repeat(32)}', 'a1.mp4', 9, 'mp4', 'h264', 2, 2, 0, 2, 2, 1, 1, 30, 33333, 1, 30, 1, 0, 'as-is', '', 0)`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
  const sql = 'SELECT size_bytes, file_modified_ms, proxy_size_bytes, proxy_modified_ms, proxy_sha256 FROM footage';
  expect(database.prepare(sql).all()).toEqual([
    { size_bytes: 9, file_modified_ms: null, proxy_size_bytes: null, proxy_modified_ms: null, proxy_sha256: null },
  ]);
  database.close();
});
