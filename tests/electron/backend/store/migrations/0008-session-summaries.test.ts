import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';
import { expectIndexedKeys } from './foreignKeys.ts';

let database: Database.Database;

/** A library of the seventh shape with a session, its second look and a received one, brought to the eighth. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, 8);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, 7)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 1, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at, rubric_version, second_look_of, read_only)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then', 2, NULL, 0),
        ('look', 't', 'Second look: Legs', '2026-03-04', '', '', 'later', 2, 's', 0),
        ('received', 't', 'Arms', '2026-03-05', '', '', 'later', 1, NULL, 1);`);
  database.transaction(() => database.exec(steps[7]?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();

describe('a library of the seventh shape, brought to the eighth', () => {
  it('has a summary of each session that is still to be made', () => {
    const columns = 'session_id, date, created_at, second_look, read_only, rubric_version, unfinished';
    expect(rows(`SELECT ${columns} FROM session_summary WHERE judging_sha256 = '' ORDER BY session_id`)).toEqual(
      [
        ['look', '2026-03-04', 'later', 1, 0, 2, 1],
        ['received', '2026-03-05', 'later', 0, 1, 1, 1],
        ['s', '2026-03-04', 'then', 0, 0, 2, 1],
      ].map(([session_id, date, created_at, second_look, read_only, rubric_version, unfinished]) => ({
        ...{ session_id, date, created_at, second_look, read_only, rubric_version, unfinished },
      })),
    );
  });

  it.each([
    ["mark = 'A'", 'a mark without a score'],
    ['score = 90', 'a score without a mark'],
    ['coverage = 1.2', 'more looked at than there is'],
    ["exercises = 'squat'", 'exercises that are no list'],
    ["content_sha256 = 'abc'", 'half a hash'],
  ])('refuses %s', (set) => {
    expect(() => database.exec(`UPDATE session_summary SET ${set}`)).toThrow(/constraint/i);
  });

  it('lets a summary go with its session, strictly typed, and finds it by an index', () => {
    expectIndexedKeys(database, ['session_summary']);
    database.exec("DELETE FROM session WHERE id = 'look'");
    expect(rows('SELECT count(*) AS left FROM session_summary')).toEqual([{ left: 2 }]);
    expect(rows("SELECT strict FROM pragma_table_list WHERE name = 'session_summary'")).toEqual([{ strict: 1 }]);
  });
});
