import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';
import { expectIndexedKeys } from './foreignKeys.ts';

let database: Database.Database;

/** A library of the third shape with a marked rep, a flag and jobs in it, brought to the fourth as the app does it. */
beforeEach(() => {
  const [first, second, third, fourth] = readMigrations(appFolder);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of [first, second, third]) database.exec(step?.sql ?? '');
  database.exec(`
    INSERT INTO trainee VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO footage (id, container, codec, width, height, rotation_deg, shown_width, shown_height, frames,
      time_base_numerator, time_base_denominator, duration_us, constant_rate, mean_fps, real_time_factor, has_audio,
      proxy_reason, filmstrip_pictures)
      VALUES ('f', 'mov', 'h264', 854, 480, 0, 854, 480, 90, 1, 30, 3000000, 1, 30, 1, 0, '', 0);
    INSERT INTO clip VALUES ('c', 'e', 'f', 1, 'Set 1', 'side', 1, 60);
    INSERT INTO rep (id, clip_id, start_frame, start_ticks) VALUES ('r', 'c', 3, 3);
    INSERT INTO flag (id, clip_id, ordinal, criterion, weight, whole_set, at_frame, at_ticks, note, cue)
      VALUES ('g', 'c', 1, 'depth', 'adjust', 1, 5, 5, '', '');
    INSERT INTO job (id, kind, title, state, message, session_id, clip_id, task, created_at) VALUES
      ('one', 'import', 'a.mp4', 'done', '', 's', 'c', '{}', 'then'),
      ('two', 'proxy', 'b.mp4', 'waiting', '', 's', NULL, '{"do":"proxy"}', 'then');`);
  database.transaction(() => database.exec(fourth?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();

describe('a library of the third shape, brought to the fourth', () => {
  it('keeps its reps, every edge set by a person', () => {
    expect(rows('SELECT * FROM rep')).toMatchObject([
      { id: 'r', start_frame: 3, start_measured: 0, long_end_measured: 0, end_measured: 0 },
    ]);
  });

  it('keeps its jobs in line, in their order, and takes one that measures after them', () => {
    database.exec(`INSERT INTO job (id, kind, title, state, message, session_id, clip_id, task, created_at)
      VALUES ('three', 'measure', 'Measure: Set 1', 'waiting', '', 's', 'c', '{}', 'now')`);
    expect(rows('SELECT id, kind, state, session_id, clip_id, task FROM job ORDER BY number')).toEqual([
      { id: 'one', kind: 'import', state: 'done', session_id: 's', clip_id: 'c', task: '{}' },
      { id: 'two', kind: 'proxy', state: 'waiting', session_id: 's', clip_id: null, task: '{"do":"proxy"}' },
      { id: 'three', kind: 'measure', state: 'waiting', session_id: 's', clip_id: 'c', task: '{}' },
    ]);
    expect(() => database.exec("UPDATE job SET kind = 'guess' WHERE id = 'one'")).toThrow(/constraint/i);
  });

  it('forgets recordings with their footage, and never keeps a clip from going', () => {
    const hash = 'a'.repeat(64);
    database.exec(`INSERT INTO recording VALUES ('f', 'disc', '${hash}', 'ring/1', 'now', x'00')`);
    expect(() =>
      database.exec(`INSERT INTO recording VALUES ('f', 'disc', '${hash}', 'ring/2', 'now', x'00')`),
    ).toThrow(/UNIQUE/);
    database.exec("DELETE FROM rep; DELETE FROM flag; DELETE FROM clip WHERE id = 'c'");
    expect(rows('SELECT method FROM recording')).toEqual([{ method: 'ring/1' }]);
    database.exec("DELETE FROM footage WHERE id = 'f'");
    expect(rows('SELECT method FROM recording')).toEqual([]);
  });

  it.each([
    ["INSERT INTO recording VALUES ('f', 'shadow', printf('%064d', 0), 'x/1', 'now', x'00')", 'what is not recorded'],
    ["INSERT INTO recording VALUES ('gone', 'disc', printf('%064d', 0), 'x/1', 'now', x'00')", 'no footage'],
    ["INSERT INTO clip_set_up VALUES ('gone', '{}')", 'a set-up of no clip'],
    ["INSERT INTO clip_set_up VALUES ('c', '[]')", 'a set-up that is no object'],
    ["INSERT INTO suggestion_answer VALUES ('c', 'x', 'accepted', NULL)", 'an accepted suggestion without its flag'],
    ["INSERT INTO suggestion_answer VALUES ('c', 'x', 'dismissed', 'g')", 'a dismissed one with a flag'],
    ["INSERT INTO suggestion_answer VALUES ('c', 'x', 'ignored', NULL)", 'an answer that is not offered'],
    ["UPDATE rep SET start_measured = 2 WHERE id = 'r'", 'an edge half measured'],
  ])('refuses %s', (sql) => {
    expect(() => database.exec(sql)).toThrow(/constraint/i);
  });

  it('keeps a flag whose suggestion was accepted, and a clip that is set up, from going alone', () => {
    database.exec("INSERT INTO suggestion_answer VALUES ('c', 'x', 'accepted', 'g')");
    database.exec("INSERT INTO clip_set_up VALUES ('c', '{}')");
    expect(() => database.exec("DELETE FROM flag WHERE id = 'g'")).toThrow(/constraint/i);
    database.exec('DELETE FROM suggestion_answer; DELETE FROM flag; DELETE FROM rep');
    expect(() => database.exec("DELETE FROM clip WHERE id = 'c'")).toThrow(/constraint/i);
  });

  it('has strict tables only, and finds the rows of every foreign key by an index', () => {
    const loose = "SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'";
    expect(rows(loose)).toEqual([]);
    expectIndexedKeys(database, ['recording', 'clip_set_up', 'suggestion_answer', 'job']);
  });
});
