import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 13;

let database: Database.Database;

/** A library one shape older with two jobs in it, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO job (id, kind, title, state, message, task, created_at) VALUES
      ('first', 'import', 'One', 'failed', 'gone', '{}', 'then'), ('second', 'measure', 'Two', 'waiting', '', '{}', 'then');`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();

describe('a library brought to the shape that keeps settings', () => {
  it('keeps its jobs in their order, with their numbers', () => {
    expect(rows('SELECT number, id, kind, state, message FROM job ORDER BY number')).toEqual([
      { number: 1, id: 'first', kind: 'import', state: 'failed', message: 'gone' },
      { number: 2, id: 'second', kind: 'measure', state: 'waiting', message: '' },
    ]);
  });

  it('takes a kind of job that a later app knows', () => {
    database.exec(`INSERT INTO job (id, kind, title, state, message, task, created_at)
      VALUES ('third', 'narration', 'Three', 'waiting', '', '{}', 'now')`);
    expect(rows("SELECT number FROM job WHERE id = 'third'")).toEqual([{ number: 3 }]);
  });

  it('has nothing set, and keeps one value a setting', () => {
    expect(rows('SELECT * FROM setting')).toEqual([]);
    database.exec(`INSERT INTO setting VALUES ('measureByItself', 'false')`);
    expect(() => database.exec(`INSERT INTO setting VALUES ('measureByItself', 'true')`)).toThrow(/UNIQUE/);
    expect(() => database.exec(`INSERT INTO setting VALUES ('another', 'no json')`)).toThrow(/CHECK/);
  });
});
