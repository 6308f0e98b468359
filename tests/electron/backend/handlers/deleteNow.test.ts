import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { digestAnew } from '../alterLibrary.ts';
import { appFolder, ask, backendOn, hingeFile, jobEnd, preparedLibrary, refusal, squatFile } from '../workbench.ts';

type Tables = ReadonlyMap<string, readonly string[]>;

/** Every table with its rows, each as one text. */
function allTables(folder: string): Tables {
  const database = new Database(path.join(folder, 'rackside.sqlite'), { readonly: true });
  const names = database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all() as string[];
  const tables = names.map((name) => {
    const rows = database.prepare(`SELECT * FROM "${name}"`).all();
    return [name, rows.map((row) => JSON.stringify(row))] as const;
  });
  database.close();
  return new Map(tables);
}

/** The tables that can speak of a session, an exercise or a clip: by a foreign key, by one to such a table, or by a column's name. */
function tablesOfSessions(folder: string): string[] {
  const database = new Database(path.join(folder, 'rackside.sqlite'), { readonly: true });
  const links = database
    .prepare(
      `SELECT owner.name AS owner, link."table" AS target FROM sqlite_schema AS owner,
         pragma_foreign_key_list(owner.name) AS link WHERE owner.type = 'table'`,
    )
    .all() as { owner: string; target: string }[];
  const named = database
    .prepare(
      `SELECT DISTINCT owner.name FROM sqlite_schema AS owner, pragma_table_info(owner.name) AS its
       WHERE owner.type = 'table' AND its.name IN ('session_id', 'entry_id', 'clip_id')`,
    )
    .pluck()
    .all() as string[];
  database.close();
  const found = new Set(['session', 'entry', 'clip', ...named]);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const { owner, target } of links) if (found.has(target)) found.add(owner);
  }
  return [...found].sort();
}

/** Fills every table that can speak of a session: most by what a coach does, the rest as it is stored. */
async function filledLibrary() {
  const library = await preparedLibrary([squatFile, hingeFile]);
  const { folder, sessionId, clipId } = library;
  const backend = openBackend({ libraryFolder: folder, appFolder });
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 24 });
  const flag = { clipId, criterion: 'depth', severity: 'adjust', reps: [1], frame: 70 } as const;
  const { flagId } = await ask(backend, 'flags.add', { ...flag, reps: [...flag.reps] });
  await ask(backend, 'ticks.set', { clipId, criterion: 'headPosition', reps: 'set', fine: true });
  await ask(backend, 'covers.add', { clipId, cover: { kind: 'head' }, look: 'filled' });
  const [from, to] = [
    { x: 1, y: 2 },
    { x: 30, y: 40 },
  ];
  await ask(backend, 'drawings.add', { clipId, drawn: { shape: 'line', points: [from, to] }, frame: 3, lastFrame: 9 });
  await ask(backend, 'measures.setUp', { clipId, change: { facing: 'left' } });
  await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Dear Mira,' });
  await ask(backend, 'letters.add', { sessionId, after: 'greeting' });
  await ask(backend, 'letters.leaveOut', { sessionId, paragraph: 'opening' });
  await ask(backend, 'letters.move', { sessionId, paragraph: 'greeting', after: 'opening' });
  await ask(backend, 'letters.send', { sessionId });
  await ask(backend, 'position.set', { sessionId, clipId, frame: 3 });
  await ask(backend, 'narrations.begin', { clipId });
  await ask(backend, 'secondLook.start', { sessionId });
  await ask(backend, 'sessions.remove', { sessionId });
  await backend.close();
  const database = new Database(path.join(folder, 'rackside.sqlite'));
  const hash = 'a'.repeat(64);
  const footage = database.prepare('SELECT footage_id FROM clip WHERE id = ?').pluck().get(clipId);
  const put = (sql: string, ...values: readonly unknown[]) => database.prepare(sql).run(...values);
  put('INSERT INTO suggestion_answer VALUES (?, ?, ?, ?)', clipId, 'depth.short', 'accepted', flagId);
  put("INSERT INTO name_decision VALUES ('n', ?, 'notes', '', 'Mira', '', 'noName')", sessionId);
  put('INSERT INTO clip_speed VALUES (?, ?, 0.5)', clipId, hash);
  put("INSERT INTO handover VALUES ('h', ?, 1, 'then', 3, 1, 'full', '{}', ?, 'h.zip', ?, 1)", sessionId, hash, hash);
  put("INSERT INTO handover_delivery VALUES ('j', 'h', 'then', '/x', 1, '[]')");
  put(
    `INSERT INTO arrival (id, batch_id, path, folders, size_bytes, modified_ms, state, message, footage_id, recorded_at,
       recorded_day, recorded_by, choice, session_id, clip_id, placed, arrived_at)
     VALUES ('a', 'b', '/x/squat.mp4', '[]', 1, 1, 'read', '', ?, 'then', '2026-03-04', 'file', '{}', ?, ?, 1, 'then')`,
    ...[footage, sessionId, clipId],
  );
  database.close();
  digestAnew(folder);
  writeFileSync(path.join(folder, 'handovers', 'h.zip'), '');
  return library;
}

/** What is known of a session by its ids, wherever it is. */
function idsIn(tables: Tables): readonly string[] {
  return ['session', 'entry', 'clip', 'rep', 'flag'].flatMap((table) =>
    (tables.get(table) ?? []).map((row) => (JSON.parse(row) as { id: string }).id),
  );
}

it('leaves no row and no file of a session that is deleted, in any table that the library has', async () => {
  const { folder, sessionId } = await filledLibrary();
  const before = allTables(folder);
  // A table that is new here has to be filled above: else nobody knows whether its rows go.
  const empty = tablesOfSessions(folder).filter((table) => before.get(table)?.length === 0);
  expect(empty.filter((table) => table !== 'session_summary')).toEqual([]);
  const ids = idsIn(before);
  expect(ids.length).toBeGreaterThan(6);

  const backend = backendOn(folder);
  await ask(backend, 'bin.delete', { kind: 'session', id: sessionId });
  await backend.close();
  const left = [...allTables(folder)].flatMap(([table, rows]) =>
    rows.filter((row) => ids.some((id) => row.includes(id))).map((row) => `${table}: ${row}`),
  );
  expect(left).toEqual([]);
  for (const each of ['clips', 'pictures', 'sounds', 'handovers']) {
    expect(readdirSync(path.join(folder, each))).toEqual([]);
  }
  // The watched folder still knows the file, so that it doesn't come in by itself again.
  expect(allTables(folder).get('arrival')).toEqual([expect.stringContaining('/x/squat.mp4')]);
  const again = backendOn(folder);
  expect((await ask(again, 'library.verify', {})).findings).toEqual([]);
  expect((await refusal(again, 'desk.undo', {})).code).toBe('conflict');
});

const inBin = async (backend: Backend) => (await ask(backend, 'bin.list', {})).map(({ kind, id }) => [kind, id]);

it('deletes one clip, then all that is left in the bin, and nothing that is not there', async () => {
  const { folder, sessionId, entryId, clipIds } = await preparedLibrary([squatFile, hingeFile]);
  const backend = backendOn(folder);
  const [clipId = '', other = ''] = clipIds;
  expect((await refusal(backend, 'bin.delete', { kind: 'clip', id: clipId })).sentence).toMatch(/no longer in the bin/);
  await ask(backend, 'clips.remove', { clipId });
  await ask(backend, 'bin.delete', { kind: 'clip', id: clipId });
  expect(await inBin(backend)).toEqual([]);
  expect(readdirSync(path.join(folder, 'clips'))).toHaveLength(1);
  expect((await ask(backend, 'review.get', { sessionId })).review.entries[0]?.clips.map(({ id }) => id)).toEqual([
    other,
  ]);
  expect((await refusal(backend, 'history.undo', { sessionId })).code).toBe('conflict');

  await ask(backend, 'entries.remove', { entryId });
  const { jobId } = await ask(backend, 'inbox.take', { paths: [squatFile] });
  await jobEnd(backend, jobId ?? '');
  const [file] = (await ask(backend, 'inbox.get', {})).files;
  const arrivalId = file?.arrivalId ?? '';
  await ask(backend, 'inbox.remove', { arrivalIds: [arrivalId] });
  expect(await inBin(backend)).toEqual([
    ['file', arrivalId],
    ['entry', entryId],
  ]);
  await ask(backend, 'bin.restore', { kind: 'file', id: arrivalId });
  expect((await ask(backend, 'inbox.get', {})).bytes).toBeGreaterThan(10_000);
  await ask(backend, 'inbox.remove', { arrivalIds: [arrivalId] });
  await ask(backend, 'bin.empty', {});
  expect(await inBin(backend)).toEqual([]);
  expect(readdirSync(path.join(folder, 'clips'))).toEqual([]);
  expect(existsSync(squatFile)).toBe(true);
  expect((await ask(backend, 'library.verify', {})).findings).toEqual([]);
});

it('keeps what was removed from the inbox for thirty days', async () => {
  const { folder, sessionId } = await preparedLibrary();
  const first = openBackend({ libraryFolder: folder, appFolder });
  const { jobId } = await ask(first, 'inbox.take', { paths: [hingeFile] });
  await jobEnd(first, jobId ?? '');
  const arrivalIds = (await ask(first, 'inbox.get', {})).files.map(({ arrivalId }) => arrivalId);
  await ask(first, 'inbox.remove', { arrivalIds });
  await first.close();
  const reopened = async (days: number) => {
    const database = new Database(path.join(folder, 'rackside.sqlite'));
    const then = new Date(Date.now() - days * 86_400_000).toISOString();
    database.prepare('UPDATE arrival SET removed_at = ?').run(then);
    database.close();
    const backend = openBackend({ libraryFolder: folder, appFolder });
    await ask(backend, 'desk.session', { sessionId });
    for (let turn = 0; turn < 20; turn += 1) await new Promise(setImmediate);
    const there = await inBin(backend);
    await backend.close();
    return [there.length, readdirSync(path.join(folder, 'clips')).length];
  };
  expect(await reopened(29)).toEqual([1, 2]);
  expect(await reopened(31)).toEqual([0, 1]);
});
