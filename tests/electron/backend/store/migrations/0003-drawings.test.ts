import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

let database: Database.Database;

/** A library of the second shape with a clip in it, brought to the third. */
beforeEach(() => {
  const [first, second, third] = readMigrations(appFolder);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  database.exec(first?.sql ?? '');
  database.exec(second?.sql ?? '');
  database.exec(`
    INSERT INTO trainee VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO clip VALUES ('c', 'e', NULL, 1, 'Set 1', 'side', 1, 60);`);
  database.exec(third?.sql ?? '');
});

const columns = '(id, clip_id, ordinal, shape, points, text, from_frame, from_ticks, to_seconds)';
const insert = (values: string) => database.exec(`INSERT INTO drawing ${columns} VALUES ${values}`);

describe('a library of the second shape, brought to the third', () => {
  it('keeps its clips, with nothing drawn on them', () => {
    expect(database.prepare('SELECT id, name, load_kg FROM clip').all()).toEqual([
      { id: 'c', name: 'Set 1', load_kg: 60 },
    ]);
    expect(database.prepare('SELECT count(*) AS drawings FROM drawing').get()).toEqual({ drawings: 0 });
  });

  it('takes a drawing, and keeps its clip from being taken away alone', () => {
    insert(`('d', 'c', 1, 'line', '[{"x":1,"y":2},{"x":3,"y":4}]', NULL, 0, 0, 1.5)`);
    expect(() => database.exec("DELETE FROM clip WHERE id = 'c'")).toThrow(/constraint/i);
  });

  it.each([
    [`('d', 'gone', 1, 'line', '[]', NULL, 0, 0, 1)`, 'on no clip'],
    [`('d', 'c', 1, 'star', '[]', NULL, 0, 0, 1)`, 'of an unknown shape'],
    [`('d', 'c', 1, 'line', 'x', NULL, 0, 0, 1)`, 'with points that aren’t JSON'],
    [`('d', 'c', 1, 'line', '[]', 'words', 0, 0, 1)`, 'a line with words'],
    [`('d', 'c', 1, 'text', '[]', NULL, 0, 0, 1)`, 'a text without words'],
    [`('d', 'c', 1, 'line', '[]', NULL, 0, NULL, 1)`, 'from half a moment'],
    [`('d', 'c', 1, 'line', '[]', NULL, 0, 0, NULL)`, 'without an end'],
  ])('refuses %s', (values) => {
    expect(() => insert(values)).toThrow(/constraint/i);
  });

  it('finds the drawings of a clip by an index', () => {
    const plan = database.prepare("EXPLAIN QUERY PLAN SELECT 1 FROM drawing WHERE clip_id = 'x'").all();
    expect(JSON.stringify(plan)).toContain('SEARCH');
  });
});
