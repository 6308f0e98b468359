import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';
import { expectIndexedKeys } from './foreignKeys.ts';

let database: Database.Database;

/** A library of the fourth shape with a session and jobs in it, brought to the fifth as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, 5);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, 4)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO job (id, kind, title, state, message, session_id, clip_id, task, created_at) VALUES
      ('one', 'measure', 'Measure: a', 'done', '', 's', NULL, '{}', 'then'),
      ('two', 'proxy', 'b.mp4', 'waiting', '', 's', NULL, '{"do":"proxy"}', 'then');`);
  database.transaction(() => database.exec(steps[4]?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();
const keep = (id: string, version: number) =>
  database.exec(`INSERT INTO handover VALUES
    ('${id}', 's', ${version}, 'now', 2, 1, 'first', '{}', printf('%064d', 1), 's-v${version}.zip', printf('%064d', 2), 7)`);

describe('a library of the fourth shape, brought to the fifth', () => {
  it('names its trainees in full, and lets its sessions be changed', () => {
    expect(rows('SELECT names FROM trainee')).toEqual([{ names: 'full' }]);
    expect(rows('SELECT read_only FROM session')).toEqual([{ read_only: 0 }]);
    database.exec("UPDATE trainee SET names = 'initials'");
    expect(() => database.exec("UPDATE trainee SET names = 'nickname'")).toThrow(/constraint/i);
    expect(() => database.exec('UPDATE session SET read_only = 2')).toThrow(/constraint/i);
  });

  it('keeps its jobs in line, in their order, and takes one that hands over after them', () => {
    database.exec(`INSERT INTO job (id, kind, title, state, message, session_id, clip_id, task, created_at)
      VALUES ('three', 'handover', 'Hand over', 'waiting', '', 's', NULL, '{}', 'now')`);
    expect(rows('SELECT id, kind, state FROM job ORDER BY number')).toEqual([
      { id: 'one', kind: 'measure', state: 'done' },
      { id: 'two', kind: 'proxy', state: 'waiting' },
      { id: 'three', kind: 'handover', state: 'waiting' },
    ]);
    expect(() => database.exec("UPDATE job SET kind = 'guess' WHERE id = 'one'")).toThrow(/constraint/i);
  });

  it('never changes what was handed over, and keeps each version once', () => {
    keep('h', 1);
    expect(() => database.exec("UPDATE handover SET manifest = '[]'")).toThrow(/never changed/);
    expect(() => keep('again', 1)).toThrow(/UNIQUE/);
    keep('next', 2);
  });

  it('forgets deliveries with their handover, and both with their session', () => {
    keep('h', 1);
    database.exec("INSERT INTO handover_delivery VALUES ('one', 'h', 'now', '/there', 12, '[]')");
    database.exec("DELETE FROM session WHERE id = 's'");
    expect(rows('SELECT * FROM handover')).toEqual([]);
    expect(rows('SELECT * FROM handover_delivery')).toEqual([]);
  });

  it.each([
    ["INSERT INTO handover_delivery VALUES ('one', 'gone', 'now', '/there', 12, '[]')", 'a delivery of nothing'],
    ["INSERT INTO handover_delivery VALUES ('one', 'h', 'now', '/there', 12, '{}')", 'failures that are no list'],
    [
      "INSERT INTO handover SELECT 'x', session_id, 9, handed_at, 1, 1, names, manifest, content_sha256, '../x.zip', sha256, 1 FROM handover",
      'a kept file elsewhere',
    ],
  ])('refuses %s', (sql) => {
    keep('h', 1);
    expect(() => database.exec(sql)).toThrow(/constraint/i);
  });

  it('has strict tables only, and finds the rows of every foreign key by an index', () => {
    const loose = "SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'";
    expect(rows(loose)).toEqual([]);
    expectIndexedKeys(database, ['handover', 'handover_delivery', 'job']);
  });
});
