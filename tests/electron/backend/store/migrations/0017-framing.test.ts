import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 17;
const hash = 'a'.repeat(64);

let database: Database.Database;

/** A library one shape older with a clip and what was recorded of it, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO footage (id, container, codec, width, height, rotation_deg, shown_width, shown_height, frames,
      time_base_numerator, time_base_denominator, duration_us, constant_rate, mean_fps, real_time_factor, has_audio,
      proxy_reason, filmstrip_pictures)
      VALUES ('f', 'mp4', 'h264', 64, 32, 0, 64, 32, 50, 1, 25, 2000000, 1, 25, 1, 0, '', 0);
    INSERT INTO recording (footage_id, what, clicks, method, recorded_at, data, warnings)
      VALUES ('f', 'disc', '${hash}', 'ring/1', 'then', x'00', '[]');
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at) VALUES ('t', 'Mira', 'growth', 'new', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at, rubric_version)
      VALUES ('s', 't', '', '2026-01-01', '', '', 'then', 1);
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO clip (id, entry_id, footage_id, ordinal, name, real_time_factor) VALUES ('c', 'e', 'f', 1, 'Set 1', 1);`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();

describe('a library brought to the shape that knows how clips are framed', () => {
  it('shows each clip as filmed, all of it', () => {
    expect(rows('SELECT turn_deg, mirrored, crop, brightness, section_from_frame, section_to_ticks FROM clip')).toEqual(
      [{ turn_deg: 0, mirrored: 0, crop: null, brightness: 1, section_from_frame: null, section_to_ticks: null }],
    );
  });

  it('keeps what was recorded as that of all frames, and takes a section’s beside it', () => {
    expect(rows('SELECT clicks, method, first_frame, last_frame, hex(data) AS data FROM recording')).toEqual([
      { clicks: hash, method: 'ring/1', first_frame: 0, last_frame: 10_000_000, data: '00' },
    ]);
    database.exec(`INSERT INTO recording VALUES ('f', 'disc', '${hash}', 5, 20, 'ring/1', 'now', x'01', '[]')`);
    expect(rows('SELECT count(*) AS count FROM recording')).toEqual([{ count: 2 }]);
    database.exec("UPDATE clip SET footage_id = NULL; DELETE FROM footage WHERE id = 'f'");
    expect(rows('SELECT * FROM recording')).toEqual([]);
  });

  it.each(['turn_deg = 45', "crop = 'all'", 'brightness = 9', 'mirrored = 2', 'section_from_frame = -1'])(
    'refuses %s',
    (column) => {
      expect(() => database.exec(`UPDATE clip SET ${column}`)).toThrow(/CHECK|malformed/);
    },
  );
});
