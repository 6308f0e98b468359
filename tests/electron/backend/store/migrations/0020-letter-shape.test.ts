import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';
import { expectIndexedKeys } from './foreignKeys.ts';

const version = 20;

let database: Database.Database;

/** A library one shape older with an edited letter in it that was sent, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO letter_edit VALUES ('x', 's', 'greeting', 'Hi', 'Hello');
    INSERT INTO sent_letter VALUES ('y', 's', 1, 'now', 1, 'A', '{"blocks":[]}', '{}', '{}', '${'a'.repeat(64)}');`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();

describe('a library brought to the shape that keeps the order of letters', () => {
  it('keeps its edits and what was sent, and has every letter as it is planned', () => {
    expect(rows('SELECT paragraph, words FROM letter_edit')).toEqual([{ paragraph: 'greeting', words: 'Hi' }]);
    expect(rows('SELECT version, document FROM sent_letter')).toEqual([{ version: 1, document: '{"blocks":[]}' }]);
    for (const table of ['letter_paragraph', 'letter_left_out', 'letter_order'])
      expect(rows(`SELECT * FROM ${table}`)).toEqual([]);
  });

  it.each([
    ["INSERT INTO letter_paragraph VALUES ('a', 'gone', 'Hi', '')", 'a paragraph of no session’s letter'],
    ["INSERT INTO letter_left_out VALUES ('a', 's', '')", 'leaving out nothing'],
    ["INSERT INTO letter_order VALUES ('s', 'greeting')", 'an order that is no list'],
  ])('refuses %s', (sql) => {
    expect(() => database.exec(sql)).toThrow(/constraint/i);
  });

  it('leaves a paragraph out once', () => {
    database.exec("INSERT INTO letter_left_out VALUES ('a', 's', 'greeting')");
    expect(() => database.exec("INSERT INTO letter_left_out VALUES ('b', 's', 'greeting')")).toThrow(/UNIQUE/);
  });

  it('says of every foreign key what happens on deletion, and has an index for it', () => {
    expectIndexedKeys(database, ['letter_paragraph', 'letter_left_out', 'letter_order']);
  });
});
