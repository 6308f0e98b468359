import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';
import { expectIndexedKeys } from './foreignKeys.ts';

let database: Database.Database;

/** A library of the first shape with a session in it, brought to the second. */
beforeEach(() => {
  const [first, second] = readMigrations(appFolder);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  database.exec(first?.sql ?? '');
  database.exec(`
    INSERT INTO trainee VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 0, 'then');
    INSERT INTO session VALUES ('s', 't', 'Legs', '2026-03-04', 'slept well', '', NULL, NULL, 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');`);
  database.exec(second?.sql ?? '');
});

const row = (sql: string) => database.prepare(sql).get();

describe('a library of the first shape, brought to the second', () => {
  it('keeps its sessions as they were, judged by version 1 of the rubric, no grade set by hand', () => {
    expect(row('SELECT * FROM session')).toMatchObject({
      ...{ id: 's', title: 'Legs', date: '2026-03-04', notes: 'slept well', rubric_version: 1 },
      ...{ override_score: null, override_reason: null, second_look_of: null },
      ...{ letter_language: 'en', letter_length: 'full', letter_tone: 'plain' },
    });
    expect(row('SELECT * FROM entry')).toMatchObject({ id: 'e', exercise: 'back-squat', override_score: null });
  });

  it.each([
    ["UPDATE session SET override_score = 80 WHERE id = 's'", 'a grade by hand without a reason'],
    ["UPDATE entry SET override_reason = 'why not' WHERE id = 'e'", 'a reason without a grade'],
    ["UPDATE entry SET override_score = 101, override_reason = 'x' WHERE id = 'e'", 'more than 100 points'],
    ["UPDATE session SET letter_tone = 'stern' WHERE id = 's'", 'a tone that is not offered'],
    ["UPDATE session SET second_look_of = 'gone' WHERE id = 's'", 'a second look at nothing'],
    ["INSERT INTO letter_edit VALUES ('x', 'gone', 'greeting', 'Hi', '')", 'an edit of no session’s letter'],
    ["INSERT INTO sent_letter VALUES ('x', 's', 0, 'now', 1, 'A', '{}', '{}', '{}', 'short')", 'a version 0'],
  ])('refuses %s', (sql) => {
    expect(() => database.exec(sql)).toThrow(/constraint/i);
  });

  it('has strict tables only', () => {
    const loose = "SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'";
    expect(database.prepare(loose).pluck().all()).toEqual([]);
  });

  it('holds one edit a paragraph and one letter a version', () => {
    const hash = 'a'.repeat(64);
    database.exec("INSERT INTO letter_edit VALUES ('x', 's', 'greeting', 'Hi', 'Hello')");
    expect(() => database.exec("INSERT INTO letter_edit VALUES ('y', 's', 'greeting', 'Ho', 'Hello')")).toThrow(
      /UNIQUE/,
    );
    const sent = (id: string) =>
      database.exec(`INSERT INTO sent_letter VALUES ('${id}', 's', 1, 'now', 1, 'A', '{}', '{}', '{}', '${hash}')`);
    sent('x');
    expect(() => sent('y')).toThrow(/UNIQUE/);
  });

  it('never lets a letter change once it was sent', () => {
    const hash = 'a'.repeat(64);
    database.exec(`INSERT INTO sent_letter VALUES ('x', 's', 1, 'now', 1, 'A', '{}', '{}', '{}', '${hash}')`);
    expect(() => database.exec("UPDATE sent_letter SET letter = 'F'")).toThrow('a sent letter is never changed');
    expect(row('SELECT letter FROM sent_letter')).toEqual({ letter: 'A' });
  });

  it('says of every foreign key what happens on deletion, and has an index for it', () => {
    expectIndexedKeys(database, ['session', 'letter_edit', 'sent_letter']);
  });
});
