import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

let database: Database.Database;

/** A library of the fifth shape with two clips and a drawing in it, brought to the sixth as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, 6);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, 5)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 1, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES ('c', 'e', 1, 'Set 1', 1), ('d', 'e', 2, 'Set 2', 1);
    INSERT INTO drawing (id, clip_id, ordinal, shape, points, from_seconds, to_seconds)
      VALUES ('line', 'c', 1, 'line', '[{"x":1,"y":1},{"x":2,"y":2}]', 0.5, 1.5);`);
  database.transaction(() => database.exec(steps[5]?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();
const places = '[{"frame":3,"box":{"leftPx":1,"topPx":2,"widthPx":30,"heightPx":40}}]';
const cover = (id: string, rest: string) => database.exec(`INSERT INTO cover VALUES ('${id}', ${rest})`);

describe('a library of the fifth shape, brought to the sixth', () => {
  it('keeps its clips and what is drawn on them, with nothing covered', () => {
    expect(rows('SELECT id, name FROM clip ORDER BY ordinal')).toEqual([
      { id: 'c', name: 'Set 1' },
      { id: 'd', name: 'Set 2' },
    ]);
    expect(rows('SELECT id, clip_id FROM drawing')).toEqual([{ id: 'line', clip_id: 'c' }]);
    expect(rows('SELECT * FROM cover')).toEqual([]);
  });

  it('takes boxes and the head of each clip', () => {
    cover('one', `'c', 1, 'box', 0, 99, 'filled', '${places}'`);
    cover('two', `'c', 2, 'head', 0, 99, 'mosaic', '[]'`);
    cover('three', `'d', 1, 'head', 5, 5, 'filled', '[]'`);
    expect(rows('SELECT id FROM cover ORDER BY clip_id, ordinal')).toEqual([
      { id: 'one' },
      { id: 'two' },
      { id: 'three' },
    ]);
  });

  it.each([
    [`'gone', 1, 'box', 0, 9, 'filled', '${places}'`, 'a cover of nothing'],
    [`'c', 1, 'box', 0, 9, 'filled', '[]'`, 'a box that is nowhere'],
    [`'c', 1, 'head', 0, 9, 'filled', '${places}'`, 'a head that was placed'],
    [`'c', 1, 'box', 0, 9, 'filled', '{}'`, 'places that are no list'],
    [`'c', 1, 'box', 0, 9, 'filled', 'here'`, 'places that are no JSON'],
    [`'c', 1, 'box', 9, 8, 'filled', '${places}'`, 'an end before the beginning'],
    [`'c', 1, 'box', -1, 8, 'filled', '${places}'`, 'a frame before the first'],
    [`'c', 1, 'box', 0, 8, 'blurred', '${places}'`, 'a look that can be undone'],
    [`'c', 1, 'all', 0, 8, 'filled', '[]'`, 'another kind'],
  ])('refuses %s', (rest) => {
    expect(() => cover('x', rest)).toThrow(/constraint/i);
  });

  it('covers the head of a clip once', () => {
    cover('one', `'c', 1, 'head', 0, 9, 'filled', '[]'`);
    expect(() => cover('two', `'c', 2, 'head', 0, 9, 'filled', '[]'`)).toThrow(/UNIQUE/);
  });

  it('lets no clip go that something is covered in, strictly typed, and finds covers by an index', () => {
    cover('one', `'c', 1, 'box', 0, 9, 'filled', '${places}'`);
    database.exec('DELETE FROM drawing');
    expect(() => database.exec("DELETE FROM clip WHERE id = 'c'")).toThrow(/FOREIGN KEY/);
    expect(rows("SELECT strict FROM pragma_table_list WHERE name = 'cover'")).toEqual([{ strict: 1 }]);
    const plan = database.prepare("EXPLAIN QUERY PLAN SELECT 1 FROM cover WHERE clip_id = 'x'").all();
    expect(JSON.stringify(plan)).toContain('SEARCH');
  });
});
