import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

let database: Database.Database;

beforeEach(() => {
  database = new Database(':memory:');
  database.exec(readMigrations(appFolder)[0]?.sql ?? '');
});

const names = () =>
  database
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")
    .pluck()
    .all() as string[];

describe('the first shape of a library, made from an empty file', () => {
  it('has strict tables only', () => {
    const loose = database
      .prepare("SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0")
      .pluck()
      .all();
    expect(loose.filter((name) => !String(name).startsWith('sqlite_'))).toEqual([]);
  });

  it('says of every foreign key what happens on deletion, and has an index for it', () => {
    const keys = names().flatMap((table) =>
      database
        .prepare('SELECT ? AS tableName, "from" AS columnName, on_delete AS onDelete FROM pragma_foreign_key_list(?)')
        .all(table, table),
    ) as { tableName: string; columnName: string; onDelete: string }[];
    expect(keys.length).toBeGreaterThan(10);
    expect(keys.filter((key) => key.onDelete === 'NO ACTION')).toEqual([]);
    const unindexed = keys.filter(({ tableName, columnName }) => {
      const plan = database.prepare(`EXPLAIN QUERY PLAN SELECT 1 FROM ${tableName} WHERE ${columnName} = 'x'`).all();
      return !JSON.stringify(plan).includes('SEARCH');
    });
    expect(unindexed).toEqual([]);
  });

  it.each([
    ["INSERT INTO library VALUES (2, 'a', 'now', 'coach', '')", 'a second row about itself'],
    ["INSERT INTO library VALUES (1, 'a', 'now', 'crowd', '')", 'a voice that nobody has'],
    ["INSERT INTO trainee VALUES ('t', '', 'growth', 'new', 'kg', 0, 'now')", 'a trainee without a name'],
    ["INSERT INTO trainee VALUES ('t', 'Mira', 'growth', 'new', 'stone', 0, 'now')", 'a unit that is not offered'],
    ["INSERT INTO trainee VALUES ('t', 'Mira', 'growth', 'new', 'kg', 'no', 'now')", 'a word for a number'],
    ["INSERT INTO session VALUES ('s', 'nobody', '', '2026-03-04', '', '', NULL, NULL, 'now')", 'a session of nobody'],
    [
      "INSERT INTO rep (id, clip_id, start_frame, start_ticks) VALUES ('r', 'c', 3, 9007199254740993)",
      'a time beyond what numbers hold exactly',
    ],
    ["INSERT INTO act_change VALUES (1, 0, 'flag', 'not json', NULL, '{}')", 'a change that is no JSON'],
  ])('refuses %s', (sql) => {
    expect(() => database.exec(sql)).toThrow(/constraint|datatype|cannot store/i);
  });
});
