import { rmSync } from 'node:fs';
import path from 'node:path';
import { afterEach, expect, it } from 'vitest';
import {
  all,
  closeWriting,
  openWriting,
  runScript,
  type Writing,
} from '../../../../../electron/backend/store/connection.ts';
import { migrate, readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { listDiffering } from '../../../../../electron/backend/store/rowDigests.ts';
import { appFolder, temporaryFolder } from '../../workbench.ts';

const version = 25;

let writing: Writing | undefined;
afterEach(() => {
  if (writing) closeWriting(writing);
});

/** A library one shape older with a flag in it, brought to this one as the app does it. */
function migrated(): Writing {
  const steps = readMigrations(appFolder).slice(0, version);
  const file = path.join(temporaryFolder(), 'library.sqlite');
  rmSync(file, { force: true });
  writing = openWriting(file);
  migrate(writing, steps.slice(0, -1), () => undefined);
  runScript(
    writing,
    `INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira', 'growth', 'new', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES ('c', 'e', 1, 'Set 1', 1);
    INSERT INTO tick (id, clip_id, criterion) VALUES ('k', 'c', 'depth'), ('l', 'c', 'bracing');
    INSERT INTO act (id, session_id, name, at, who, undoable, state) VALUES (7, 's', 'Tick', 'then', 'Ada', 1, 'done');`,
  );
  migrate(writing, steps, () => undefined);
  return writing;
}

it('gives the rows of an older library their digests', () => {
  const library = migrated();
  expect(all(library, 'SELECT table_name, owner FROM row_digest ORDER BY table_name')).toEqual([
    { table_name: 'act', owner: 's' },
    { table_name: 'clip', owner: 'e' },
    { table_name: 'entry', owner: 's' },
    { table_name: 'session', owner: 's' },
    { table_name: 'sqlite_schema', owner: '' },
    { table_name: 'tick', owner: 'c' },
    { table_name: 'trainee', owner: 't' },
  ]);
  expect(listDiffering(library)).toEqual([]);
});

it('sees a row that changed behind its back, and which', () => {
  const library = migrated();
  runScript(library, "UPDATE tick SET criterion = 'depti' WHERE id = 'k'");
  expect(listDiffering(library)).toMatchObject([{ table: 'tick', owner: 'c' }]);
});
