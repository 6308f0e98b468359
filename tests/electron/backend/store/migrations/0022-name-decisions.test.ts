import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';
import { expectIndexedKeys } from './foreignKeys.ts';

const version = 22;

let database: Database.Database;

/** A library one shape older with a session in it, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mark Holt', 'growth', 'experienced', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', 'Mark slept well', '', 'then');`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const decide = (id: string, verdict: string, word = 'Mark'): void => {
  database
    .prepare("INSERT INTO name_decision VALUES (?, 's', 'notes/', '', ?, ' slept well', ?)")
    .run(id, word, verdict);
};

describe('a library brought to the shape that keeps what is no name', () => {
  it('has nothing decided, and takes one decision for a place', () => {
    expect(database.prepare('SELECT * FROM name_decision').all()).toEqual([]);
    decide('a', 'noName');
    expect(() => decide('b', 'name')).toThrow(/UNIQUE/);
    expect(database.prepare('SELECT notes FROM session').all()).toEqual([{ notes: 'Mark slept well' }]);
  });

  it('refuses any other answer, and a place without a word', () => {
    expect(() => decide('a', 'perhaps')).toThrow(/constraint/i);
    expect(() => decide('a', 'name', '')).toThrow(/constraint/i);
  });

  it('says of every foreign key what happens on deletion, and has an index for it', () => {
    expectIndexedKeys(database, ['name_decision']);
  });
});
