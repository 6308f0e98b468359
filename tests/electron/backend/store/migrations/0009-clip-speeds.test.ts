import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 9;
const digest = 'a'.repeat(64);

let database: Database.Database;

/** A library one shape older with a clip in it, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 1, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES ('c', 'e', 1, 'Set 1', 1);`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();
const keep = (values: string) => database.exec(`INSERT INTO clip_speed VALUES (${values})`);

describe('a library brought to the shape that keeps speeds', () => {
  it('keeps its clips, with no speed known', () => {
    expect(rows('SELECT id, name FROM clip')).toEqual([{ id: 'c', name: 'Set 1' }]);
    expect(rows('SELECT * FROM clip_speed')).toEqual([]);
  });

  it('takes a speed, or that there is none', () => {
    keep(`'c', '${digest}', 0.52`);
    database.exec(`INSERT OR REPLACE INTO clip_speed VALUES ('c', '${digest}', NULL)`);
    expect(rows('SELECT fastest_mps FROM clip_speed')).toEqual([{ fastest_mps: null }]);
  });

  it.each([
    [`'gone', '${digest}', 0.5`, 'the speed of nothing'],
    [`'c', 'short', 0.5`, 'what is no digest'],
    [`'c', '${digest}', 0`, 'a speed of nought'],
    [`'c', '${digest}', 'fast'`, 'words for a speed'],
  ])('refuses %s', (values) => {
    expect(() => keep(values)).toThrow(/constraint|cannot store/i);
  });

  it('lets the speed go with its clip', () => {
    keep(`'c', '${digest}', 0.5`);
    database.exec("DELETE FROM clip WHERE id = 'c'");
    expect(rows('SELECT * FROM clip_speed')).toEqual([]);
  });
});
