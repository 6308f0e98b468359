import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 23;

let database: Database.Database;

/** A library one shape older in which a file waits to be removed, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec("INSERT INTO file_to_remove VALUES ('clips', 'a.mp4')");
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

describe('a library brought to the shape that deletes sounds with their clips', () => {
  it('keeps what waited to be removed, and takes sounds too', () => {
    database.exec("INSERT INTO file_to_remove VALUES ('sounds', 'b.webm')");
    expect(database.prepare('SELECT * FROM file_to_remove').all()).toEqual([
      { folder: 'clips', name: 'a.mp4' },
      { folder: 'sounds', name: 'b.webm' },
    ]);
  });

  it('takes no other folder, and no name that leads out of one', () => {
    expect(() => database.exec("INSERT INTO file_to_remove VALUES ('backups', 'a')")).toThrow(/CHECK/);
    expect(() => database.exec("INSERT INTO file_to_remove VALUES ('sounds', '../a')")).toThrow(/CHECK/);
  });
});
