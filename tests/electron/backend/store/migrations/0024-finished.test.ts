import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 24;

it('leaves every session of a library one shape older unfinished', () => {
  const steps = readMigrations(appFolder).slice(0, version);
  const database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira', 'growth', 'new', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
  expect(database.prepare('SELECT id, finished_at FROM session').all()).toEqual([{ id: 's', finished_at: null }]);
  database.close();
});
