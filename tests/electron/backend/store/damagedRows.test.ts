import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { ask, backendOn, copyOf, preparedLibrary, refusal } from '../workbench.ts';

/** A copy of a library with something changed by a connection that keeps no digests, as a fault of the disk keeps none. */
function openDamaged(folder: string, sql: string) {
  const copy = copyOf(folder);
  const database = new Database(path.join(copy, 'rackside.sqlite'));
  database.pragma('foreign_keys = OFF');
  database.exec(sql);
  database.close();
  return backendOn(copy);
}

it('names the lists that a fault of the disk made wrong', async () => {
  const { folder } = await preparedLibrary();
  for (const [sql, lists] of [
    ['', []],
    ["UPDATE trainee SET name = 'Somebody'", ['trainees']],
    ['DELETE FROM trainee', ['trainees']],
    ["UPDATE session SET date = '2020-01-01'", ['sessions']],
    ['DELETE FROM entry', ['sessions']],
    ["UPDATE clip SET name = 'another.mp4'", ['sessions']],
  ] as const) {
    const backend = openDamaged(folder, sql);
    expect((await ask(backend, 'library.state', {})).kind).toBe('open');
    expect(await ask(backend, 'library.damage', {}), sql).toEqual(lists);
  }
});

it('measures no clip that a fault of the disk changed', async () => {
  const { folder, clipId } = await preparedLibrary();
  for (const sql of [
    "UPDATE clip SET view = 'front'",
    'UPDATE footage SET width = width + 2',
    'UPDATE entry SET ordinal = 7',
  ]) {
    const backend = openDamaged(folder, sql);
    for (const name of ['measures.get', 'measures.recording'] as const) {
      expect((await refusal(backend, name, { clipId })).code, sql).toBe('library-damaged');
    }
  }
});

it('makes a summary anew that is gone, so that no session drops out of the list', async () => {
  const { folder, sessionId } = await preparedLibrary();
  const { sessions } = await ask(openDamaged(folder, 'DELETE FROM session_summary'), 'desk.sessions', {
    ...{ limit: 10, after: null },
  });
  expect(sessions.map(({ id, damaged }) => [id, damaged])).toEqual([[sessionId, false]]);
});
