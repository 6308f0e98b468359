import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 14;

let database: Database.Database;

/** A library one shape older with two flags in it, brought to this one as the app does it. */
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
    INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES ('c', 'e', 1, 'Set 1', 1);
    INSERT INTO rep (id, clip_id, start_seconds) VALUES ('r', 'c', 1);
    INSERT INTO flag (id, clip_id, ordinal, criterion, fault, severity, whole_set, at_seconds, note, cue) VALUES
      ('f', 'c', 1, 'depth', 'shortOfDepth', 'correct', 0, 2, 'low', 'sit'), ('g', 'c', 2, 'pauses', NULL, 'keep', 1, 3, '', '');
    INSERT INTO flag_rep (flag_id, rep_id) VALUES ('f', 'r');`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();
const add = (severity: string) =>
  database.exec(`INSERT INTO flag (id, clip_id, ordinal, criterion, severity, whole_set, at_seconds, note, cue)
    VALUES ('h', 'c', 3, 'depth', ${severity}, 1, 4, 'as last week', '')`);

describe('a library brought to the shape that keeps plain notes', () => {
  it('keeps its flags with their severities, and the reps they name', () => {
    expect(rows('SELECT id, fault, severity, note, cue, at_seconds FROM flag ORDER BY ordinal')).toEqual([
      { id: 'f', fault: 'shortOfDepth', severity: 'correct', note: 'low', cue: 'sit', at_seconds: 2 },
      { id: 'g', fault: null, severity: 'keep', note: '', cue: '', at_seconds: 3 },
    ]);
    expect(rows('SELECT * FROM flag_rep')).toEqual([{ flag_id: 'f', rep_id: 'r' }]);
  });

  it('takes a flag without a severity, and none of a severity that nobody knows', () => {
    add('NULL');
    expect(rows("SELECT severity FROM flag WHERE id = 'h'")).toEqual([{ severity: null }]);
    expect(() => add("'grave'")).toThrow(/CHECK/);
  });
});
