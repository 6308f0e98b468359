import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 15;

let database: Database.Database;

/** A library one shape older with a job in it, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`INSERT INTO job (id, kind, title, state, message, task, created_at)
    VALUES ('first', 'import', 'One', 'failed', 'gone', '{}', 'then')`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const add = (id: string, clip: string, rest: string): void => {
  database.exec(`INSERT INTO narration
    (id, clip_id, made_at, shown_width, shown_height, lasts_us, state, file, sha256, size_bytes, track)
    VALUES ('${id}', '${clip}', 'now', 640, 480, 0, ${rest})`);
};

describe('a library brought to the shape that keeps narrations', () => {
  it('holds none, and what it held before', () => {
    expect(database.prepare('SELECT * FROM narration').all()).toEqual([]);
    expect(database.prepare('SELECT id FROM job').all()).toEqual([{ id: 'first' }]);
  });

  it('takes one a clip', () => {
    add('one', 'clip', "'recording', NULL, NULL, NULL, NULL");
    expect(() => add('two', 'clip', "'recording', NULL, NULL, NULL, NULL")).toThrow(/UNIQUE/);
  });

  it('keeps a sound only with its hash, size and track', () => {
    add('one', 'clip', "'kept', 'a.webm', 'a', 9, '{}'");
    for (const rest of [
      "'kept', NULL, NULL, NULL, NULL",
      "'kept', 'a.webm', NULL, 9, '{}'",
      "'recording', 'a.webm', 'a', 9, '{}'",
    ]) {
      expect(() => add('two', 'other', rest)).toThrow(/CHECK/);
    }
  });
});
