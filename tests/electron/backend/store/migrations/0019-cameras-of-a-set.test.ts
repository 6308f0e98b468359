import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 19;

let database: Database.Database;

/** A library one shape older with two clips and a rep in it, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor)
      VALUES ('side', 'e', 1, 'Side', 1), ('front', 'e', 2, 'Front', 1);
    INSERT INTO rep (id, clip_id, start_frame, start_ticks) VALUES ('r', 'side', 3, 3);`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();

describe('a library brought to the shape that knows cameras of one set', () => {
  it('has every clip as a set of its own', () => {
    expect(rows('SELECT id, same_set_as, same_set_offset_us FROM clip ORDER BY id')).toEqual([
      { id: 'front', same_set_as: null, same_set_offset_us: null },
      { id: 'side', same_set_as: null, same_set_offset_us: null },
    ]);
    expect(rows('SELECT id, same_rep FROM rep')).toEqual([{ id: 'r', same_rep: null }]);
  });

  it('takes a clip into another’s set, with the offset of their clocks', () => {
    database.exec("UPDATE clip SET same_set_as = 'side', same_set_offset_us = -1000000 WHERE id = 'front'");
    expect(rows("SELECT same_set_offset_us AS us FROM clip WHERE same_set_as = 'side'")).toEqual([{ us: -1_000_000 }]);
  });

  it.each([
    ["same_set_as = 'side'", 'a set without an offset'],
    ['same_set_offset_us = 3', 'an offset without a set'],
    ["same_set_as = 'front', same_set_offset_us = 0", 'a clip of its own set'],
  ])('refuses %s: %s', (change) => {
    expect(() => database.exec(`UPDATE clip SET ${change} WHERE id = 'front'`)).toThrow(/CHECK/);
  });
});
