import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 16;

let database: Database.Database;

/** A library one shape older: a session whose letter was sent between its second and its third change, and one never sent. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at) VALUES ('t', 'Mira', 'growth', 'new', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at, rubric_version)
      VALUES ('sent', 't', '', '2026-03-04', '', '', '2026-03-04T08', 3), ('never', 't', '', '2026-03-05', '', '', '2026-03-05T08', 3);
    INSERT INTO session_summary
      SELECT id, trainee_id, date, created_at, 0, 0, '[]', 2, 1, 'B', 84, 0, 0, 1, 0, 3, 3, '${'b'.repeat(64)}', NULL FROM session;
    INSERT INTO act (id, session_id, name, at, who, undoable, state) VALUES
      (1, 'sent', '{}', '2026-03-04T09', 'Ada', 0, 'done'), (2, 'sent', '{}', '2026-03-04T10', 'Ada', 1, 'done'),
      (3, 'sent', '{}', '2026-03-04T11', 'Ada', 0, 'done'), (4, 'sent', '{}', '2026-03-04T12', 'Ada', 1, 'done'),
      (5, 'never', '{}', '2026-03-05T09', 'Ada', 1, 'done');
    INSERT INTO act_change SELECT id, 0, 'session', '{}', '{}', '{}' FROM act WHERE id <> 3;
    INSERT INTO sent_letter (id, session_id, version, sent_at, rubric_version, letter, document, review, grade, sha256)
      VALUES ('l', 'sent', 1, '2026-03-04T11', 3, 'B', '{}', '{}', '{}', '${'a'.repeat(64)}');
    INSERT INTO job (id, kind, title, state, message, task, created_at) VALUES ('j', 'import', 'One', 'waiting', '', '{}', 'then');`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rows = (sql: string) => database.prepare(sql).all();

describe('a library brought to the shape that knows what is due', () => {
  it('knows how a session stood when it was sent last, by the acts that changed something', () => {
    expect(rows('SELECT * FROM session_sent')).toEqual([
      { session_id: 'sent', sent_at: '2026-03-04T11', standing_acts: 2, newest_act: 2 },
    ]);
  });

  it('has every summary made anew', () => {
    expect(rows("SELECT count(*) AS old FROM session_summary WHERE judging_sha256 = ''")).toEqual([{ old: 2 }]);
    expect(rows('SELECT DISTINCT state, came_at, measured, clips_left, due FROM session_summary')).toEqual([
      { state: 'new', came_at: '', measured: 0, clips_left: 0, due: 0 },
    ]);
  });

  it('takes jobs up in the order they were asked for, until somebody orders them', () => {
    expect(rows('SELECT id, rank FROM job')).toEqual([{ id: 'j', rank: 0 }]);
  });
});
