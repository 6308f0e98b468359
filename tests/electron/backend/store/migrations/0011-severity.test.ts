import { writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { applicationId } from '../../../../../electron/backend/store/inspect.ts';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { noteInNewNames } from '../../../../../electron/backend/store/oldNames.ts';
import type { Backend } from '../../../../../electron/contract/backend.ts';
import { sayStoredMeasuring } from '../../../../../engine/wording/sayMeasuring.ts';
import { appFolder, ask, backendOn, historyOf, temporaryFolder } from '../../workbench.ts';

const versions = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

/** A row as the change log remembers it. */
const remembered = (row: object) => JSON.stringify(row).replaceAll("'", "''");

/**
 * A library as a past version left it: a rep, a flag on it that was first milder, and a note in a suggestion's words.
 * `version` is the number of migrations it has taken.
 */
function oldLibrary(version: number): string {
  const folder = temporaryFolder();
  const steps = readMigrations(appFolder).slice(0, version);
  const database = new Database(path.join(folder, 'rackside.sqlite'));
  database.pragma('foreign_keys = ON');
  for (const step of steps) {
    database.exec(step.sql);
    database
      .prepare("INSERT INTO migration (version, name, sha256, applied_at) VALUES (?, ?, ?, 'then')")
      .run(step.version, step.name, step.sha256);
  }
  database.pragma(`user_version = ${version}`);
  database.pragma(`application_id = ${applicationId}`);
  database.exec(`
    INSERT INTO library (only_row, id, created_at, voice, coach) VALUES (1, 'l', 'then', 'coach', 'Ada Quill');
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 0, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
    INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES ('c', 'e', 1, 'Set 1', 1);
    INSERT INTO rep (id, clip_id, start_seconds, long_end_seconds, end_seconds) VALUES ('r', 'c', 1, 2, 3);
    INSERT INTO flag (id, clip_id, ordinal, criterion, weight, whole_set, at_seconds, note, cue)
      VALUES ('f', 'c', 1, 'depth', 'correct', 1, 2, '', '');
    INSERT INTO act (id, session_id, name, at, who, undoable, state)
      VALUES (1, 's', 'Flag changed', 'then', 'Ada Quill', 1, 'done');`);
  const flag = database.prepare<[], object>("SELECT * FROM flag WHERE id = 'f'").get();
  const before = remembered({ ...flag, weight: 'prefer' });
  database.exec(`
    INSERT INTO act_change (act_id, ordinal, table_name, row_key, before, after)
      VALUES (1, 0, 'flag', '{"id":"f"}', '${before}', '${remembered(flag ?? {})}');`);
  database.close();
  writeFileSync(path.join(folder, 'rackside.log'), '');
  return folder;
}

const entryIn = async (backend: Backend) => (await ask(backend, 'review.get', { sessionId: 's' })).review.entries[0];

describe.each(versions)('a library of version %i', (version) => {
  it('keeps its flag and its rep under the names of today', async () => {
    const entry = await entryIn(backendOn(oldLibrary(version)));
    expect(entry?.flags).toMatchObject([{ severity: 'correct', reps: 'set', at: { seconds: 2 } }]);
    expect(entry?.clips[0]?.reps).toEqual([
      { index: 1, start: { seconds: 1 }, stretchedEnd: { seconds: 2 }, end: { seconds: 3 } },
    ]);
  });

  it('takes back and does again what was done before', async () => {
    const backend = backendOn(oldLibrary(version));
    expect((await historyOf(backend, 's')).undo).toBe('Flag changed');
    await ask(backend, 'history.undo', { sessionId: 's' });
    expect((await entryIn(backend))?.flags).toMatchObject([{ severity: 'prefer' }]);
    await ask(backend, 'history.redo', { sessionId: 's' });
    expect((await entryIn(backend))?.flags).toMatchObject([{ severity: 'correct' }]);
  });
});

it('says a note that was kept as a message at the end of the range that it was about', () => {
  const values = { rep: 1, value: 0.2, within: 0.1, asked: 'planNone', alsoCount: 0, alsoReps: [] };
  const kept = (where: string) => noteInNewNames({ id: 'pauseTime', values: { ...values, where } });
  expect(sayStoredMeasuring(kept('longEnd'), 'en')).toMatch(/at the stretched end/);
  expect(sayStoredMeasuring(kept('shortEnd'), 'en')).toMatch(/at the shortened end/);
  expect(sayStoredMeasuring(kept('bottom'), 'en')).toMatch(/at the bottom/);
});
