import { cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import { rowOwners } from '../../../../electron/backend/store/rowDigests.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { Params, RequestName } from '../../../../electron/contract/requests.ts';
import { appFolder, ask, backendOn, preparedLibrary, refusal, temporaryFolder } from '../workbench.ts';

const fileOf = (folder: string) => path.join(folder, 'rackside.sqlite');

/** A closed library with something in most of its tables. */
async function judgedLibrary() {
  const prepared = await preparedLibrary();
  const { folder, sessionId, entryId, clipId } = prepared;
  const backend = openBackend({ libraryFolder: folder, appFolder });
  for (const [edge, frame] of [
    ['start', 24],
    ['end', 90],
  ] as const) {
    await ask(backend, 'reps.mark', { clipId, edge, frame });
  }
  const flag = { clipId, criterion: 'depth', fault: null, severity: 'adjust', frame: 70 } as const;
  await ask(backend, 'flags.add', {
    ...flag,
    reps: [1],
    note: 'Stops above parallel today',
    cue: 'Sit lower next time',
  });
  await ask(backend, 'ticks.set', { clipId, criterion: 'headPosition', reps: 'set', fine: true });
  await ask(backend, 'covers.add', { clipId, cover: { kind: 'head' }, look: 'filled' });
  await ask(backend, 'measures.setUp', { clipId, change: { facing: 'left' } });
  await ask(backend, 'sessions.update', { sessionId, notes: 'A calm evening session' });
  await ask(backend, 'entries.update', { entryId, setsDone: 2 });
  await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Dear Mira, well done today.' });
  await ask(backend, 'letters.send', { sessionId });
  await backend.close();
  return prepared;
}

/** Places of the texts of every row in the file, wherever they lie: rows, indexes, the history. */
function placesOfTexts(folder: string, bytes: Buffer): number[] {
  const database = new Database(fileOf(folder), { readonly: true });
  const texts = new Set<string>();
  for (const table of Object.keys(rowOwners)) {
    for (const row of database.prepare(`SELECT * FROM ${table}`).raw().all() as unknown[][]) {
      for (const value of row) if (typeof value === 'string' && value.length >= 4) texts.add(value);
    }
  }
  database.close();
  const places: number[] = [];
  for (const text of texts) {
    for (let at = bytes.indexOf(text); at >= 0; at = bytes.indexOf(text, at + 1)) {
      places.push(at + Math.floor(Buffer.byteLength(text) / 2));
    }
  }
  return [...new Set(places)].sort((one, other) => one - other);
}

type Shown = Readonly<Record<string, unknown>>;

/** What the app shows of a session; 'refused' for what it refuses to show, or shows as damaged. */
async function shown(backend: Backend, sessionId: string, clipId: string): Promise<Shown> {
  const look = async <N extends RequestName>(name: N, params: Params<N>): Promise<unknown> => {
    const reply = await backend.ask(name, params);
    if (reply.ok) return reply.value;
    expect(reply.problem.code).toBe('library-damaged');
    return 'refused';
  };
  const { sessions } = (await look('desk.sessions', {})) as {
    sessions: { damaged: boolean; posters: unknown }[];
  };
  return {
    desk: sessions.map(({ posters: _, ...line }) => (line.damaged ? 'refused' : line)),
    review: await look('review.get', { sessionId }),
    history: await look('history.list', { sessionId }),
    letter: await look('letters.get', { sessionId }),
    sent: await look('letters.sent', { sessionId, version: 1 }),
    measures: await look('measures.get', { clipId }),
  };
}

it('shows no row of 110 damaged databases that is not as it was written, and verify finds what was refused', async () => {
  const { folder, sessionId, clipId } = await judgedLibrary();
  const sound = readFileSync(fileOf(folder));
  const first = openBackend({ libraryFolder: folder, appFolder });
  const before = await shown(first, sessionId, clipId);
  await first.close();
  const places = placesOfTexts(folder, sound);
  const step = places.length / 110;
  let refused = 0;
  for (let variant = 0; variant < 110; variant += 1) {
    const bytes = Buffer.from(sound);
    const place = places[Math.floor(variant * step)] ?? 0;
    bytes.writeUInt8(bytes.readUInt8(place) ^ 1, place);
    writeFileSync(fileOf(folder), bytes);
    const backend = openBackend({ libraryFolder: folder, appFolder });
    if ((await ask(backend, 'library.state', {})).kind === 'failed') refused += 1;
    else {
      const after = await shown(backend, sessionId, clipId);
      const differing = Object.keys(before).filter(
        (name) => JSON.stringify(after[name]) !== JSON.stringify(before[name]),
      );
      const wrong = differing.filter((name) => JSON.stringify(after[name])?.includes('refused') !== true);
      expect(wrong.map((name) => [place, name, after[name]])).toEqual([]);
      if (differing.length > 0) refused += 1;
      if (differing.length > 0 && variant % 4 === 0)
        expect((await ask(backend, 'library.verify', {})).sound).toBe(false);
    }
    await backend.close();
  }
  expect(refused).toBeGreaterThan(50);
});

it('refuses a session whose rows changed on the disk in one sentence, and everything else stays', async () => {
  const { folder, sessionId, clipId } = await judgedLibrary();
  const bytes = readFileSync(fileOf(folder));
  const fixed = Buffer.from(
    bytes.toString('latin1').replaceAll('Stops above parallel', 'Stops below parallel'),
    'latin1',
  );
  writeFileSync(fileOf(folder), fixed);
  const backend = backendOn(folder);
  const { sentence } = await refusal(backend, 'review.get', { sessionId });
  expect(sentence).toBe(
    'Something of this session was changed on its disk by a fault, so it is neither shown nor changed; its clips and all other sessions are safe, and the “backups” folder of the library may hold a good copy.',
  );
  const flag = { clipId, criterion: 'depth', fault: null, severity: 'adjust', frame: 71, note: '', cue: '' } as const;
  expect((await refusal(backend, 'flags.add', { ...flag, reps: [1] })).code).toBe('library-damaged');
  const { findings } = await ask(backend, 'library.verify', {});
  expect(findings).toContain('Rows of "flag" are not as Rackside wrote them.');
  expect((await ask(backend, 'desk.sessions', {})).sessions).toHaveLength(1);
  await ask(backend, 'sessions.add', {
    traineeId: (await ask(backend, 'desk.trainees', {}))[0]?.id ?? '',
    title: '',
    date: '2026-03-05',
  });
});

it('makes a summary anew that changed on the disk', async () => {
  const { folder } = await judgedLibrary();
  const database = new Database(fileOf(folder));
  database.exec('UPDATE session_summary SET flags = 77');
  database.close();
  const backend = backendOn(folder);
  const [line] = (await ask(backend, 'desk.sessions', {})).sessions;
  expect(line?.flags).toBe(1);
  expect(line?.damaged).toBe(false);
  expect((await ask(backend, 'library.verify', {})).findings).toEqual([]);
});

it('takes no damage for sound when a newer shape makes the digests anew', async () => {
  const { folder, sessionId } = await judgedLibrary();
  const database = new Database(fileOf(folder));
  database.exec("UPDATE flag SET note = 'Never written'");
  database.close();
  const newer = temporaryFolder();
  for (const part of ['migrations', 'seeds'])
    cpSync(path.join(appFolder, part), path.join(newer, part), { recursive: true });
  cpSync(path.join(appFolder, 'package.json'), path.join(newer, 'package.json'));
  const next = String(readdirSync(path.join(newer, 'migrations')).length + 1).padStart(4, '0');
  writeFileSync(path.join(newer, 'migrations', `${next}-shelf.sql`), 'ALTER TABLE flag ADD COLUMN shelf TEXT;');
  const backend = openBackend({ libraryFolder: folder, appFolder: newer });
  expect((await refusal(backend, 'review.get', { sessionId })).code).toBe('library-damaged');
  expect((await ask(backend, 'library.verify', {})).findings).toEqual([
    'Rows of "flag" are not as Rackside wrote them.',
  ]);
  await backend.close();
});

it('keeps digests for every table but those that say nothing', () => {
  const database = new Database(':memory:');
  for (const file of readdirSync(path.join(appFolder, 'migrations')).sort()) {
    database.exec(readFileSync(path.join(appFolder, 'migrations', file), 'utf8'));
  }
  const tables = database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all() as string[];
  const without = tables.filter((name) => !Object.hasOwn(rowOwners, name) && !name.startsWith('sqlite_'));
  // Jobs are told of as they run, a place is a view, speeds are kept under a digest of what they come from.
  expect(without.sort()).toEqual(['clip_speed', 'file_to_remove', 'job', 'migration', 'place', 'row_digest']);
});
