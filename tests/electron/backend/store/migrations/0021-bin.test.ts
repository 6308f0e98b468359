import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 21;

let database: Database.Database;

/** A library one shape older with a judged session in it, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira', 'growth', 'new', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO session_summary (session_id, trainee_id, date, created_at, second_look, read_only, exercises, clips, flags,
      mark, score, provisional, by_hand, coverage, unfinished, last_act, rubric_version, judging_sha256, content_sha256) VALUES
      ('s', 't', '2026-03-04', 'then', 0, 0, '[]', 0, 0, '', NULL, 0, 0, 0, 1, 1, 1, '', NULL);
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES ('c', 'e', 1, 'Set 1', 1);
    INSERT INTO tick (id, clip_id, criterion) VALUES ('k', 'c', 'depth');
    INSERT INTO act (id, session_id, name, at, who, undoable, state) VALUES (7, 's', 'Tick', 'then', 'Ada', 1, 'done');`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();

describe('a library brought to the shape that has a bin', () => {
  it('has nothing in the bin, nothing parked and nobody archived', () => {
    for (const table of ['session', 'entry', 'clip']) {
      expect(rows(`SELECT removed_at FROM ${table}`)).toEqual([{ removed_at: null }]);
    }
    expect(rows('SELECT parked FROM tick')).toEqual([{ parked: 0 }]);
    expect(rows('SELECT notes, archived_at FROM trainee')).toEqual([{ notes: '', archived_at: null }]);
    expect(rows('SELECT session_id, archived FROM session_summary')).toEqual([{ session_id: 's', archived: 0 }]);
  });

  it('keeps its history, none of it done at the desk or in two sessions', () => {
    expect(rows('SELECT id, session_id, state, at_desk FROM act')).toEqual([
      { id: 7, session_id: 's', state: 'done', at_desk: 0 },
    ]);
    expect(rows('SELECT * FROM act_also')).toEqual([]);
  });

  it('takes no name of a file that leads out of its folder', () => {
    database.exec(`INSERT INTO file_to_remove VALUES ('clips', 'a.mp4')`);
    expect(() => database.exec(`INSERT INTO file_to_remove VALUES ('clips', '../a.mp4')`)).toThrow(/CHECK/);
  });
});
