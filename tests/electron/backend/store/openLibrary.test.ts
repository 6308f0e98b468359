import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import { appFolder, ask, backendOn, dump, newLibrary, newSession, refusal, temporaryFolder } from '../workbench.ts';

const databaseIn = (folder: string) => path.join(folder, 'rackside.sqlite');

async function closedLibrary(): Promise<string> {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  await newSession(backend);
  await backend.close();
  return folder;
}

function alter(folder: string, sql: string): void {
  const database = new Database(databaseIn(folder));
  database.exec(sql);
  database.close();
}

describe('opening a library', () => {
  it('finds none in a folder that is empty or not there, and leaves both as they are', async () => {
    const folder = temporaryFolder();
    expect(await ask(backendOn(folder), 'library.state', {})).toEqual({ kind: 'none' });
    expect(readdirSync(folder)).toEqual([]);
    const missing = path.join(folder, 'missing');
    const backend = backendOn(missing);
    expect(await ask(backend, 'library.state', {})).toEqual({ kind: 'none' });
    expect((await refusal(backend, 'desk.sessions', {})).code).toBe('library-missing');
    expect(existsSync(missing)).toBe(false);
  });

  it('gives the library back as it was left, in one file', async () => {
    const folder = await closedLibrary();
    expect(readdirSync(folder).sort()).toEqual([
      'backups',
      'clips',
      'handovers',
      'pictures',
      'rackside.lock',
      'rackside.log',
      'rackside.sqlite',
      'sounds',
      'temporary',
    ]);
    const backend = backendOn(folder);
    expect(await ask(backend, 'library.state', {})).toEqual({
      kind: 'open',
      folder,
      voice: 'coach',
      coach: 'Ada Quill',
    });
    expect((await ask(backend, 'desk.sessions', {})).sessions).toHaveLength(1);
    const again = await refusal(backend, 'library.create', { contents: 'empty', voice: 'self' });
    expect(again.code).toBe('conflict');
  });

  it('takes a file that was begun and never finished for none, and makes the library then', async () => {
    const folder = temporaryFolder();
    writeFileSync(databaseIn(folder), '');
    const backend = backendOn(folder);
    expect(await ask(backend, 'library.state', {})).toEqual({ kind: 'none' });
    await ask(backend, 'library.create', { contents: 'empty', voice: 'self' });
    expect(await ask(backend, 'library.state', {})).toMatchObject({ kind: 'open', voice: 'self', coach: '' });
  });

  it('keeps a second backend out while the first has it, and lets it in afterwards', async () => {
    const folder = temporaryFolder();
    const first = await newLibrary(folder);
    const second = backendOn(folder);
    const problem = await refusal(second, 'desk.sessions', {});
    expect(problem.code).toBe('library-busy');
    expect(problem.sentence).toMatch(/open in another Rackside, so nothing was changed/);
    await second.close();
    await newSession(first);
    await first.close();
    expect(await ask(backendOn(folder), 'library.state', {})).toMatchObject({ kind: 'open' });
  });

  it('keeps out while another process has it, and opens once that was killed', async () => {
    const folder = await closedLibrary();
    const script = path.join(import.meta.dirname, '../faults/holdLibrary.ts');
    const holder = spawn(process.execPath, [script, folder], { stdio: ['pipe', 'pipe', 'inherit'] });
    onTestFinished(() => void holder.kill('SIGKILL'));
    await once(holder.stdout, 'data');
    expect((await refusal(backendOn(folder), 'desk.sessions', {})).code).toBe('library-busy');
    holder.kill('SIGKILL');
    await once(holder, 'exit');
    expect((await ask(backendOn(folder), 'desk.sessions', {})).sessions).toHaveLength(1);
  });
});

describe('a library that must not be opened', () => {
  const damages: readonly (readonly [string, (file: string) => void])[] = [
    ['text', (file) => writeFileSync(file, 'Dear diary, today I lifted. '.repeat(200))],
    ['cut short', (file) => truncateSync(file, 4096 * 5)],
    [
      'off by one byte in one page',
      (file) => {
        const bytes = readFileSync(file);
        // Byte 7 of a b-tree page's header counts its fragmented bytes (sqlite.org/fileformat2, "B-tree Pages").
        const at = 4 * 4096 + 7;
        bytes.writeUInt8(bytes.readUInt8(at) + 9, at);
        writeFileSync(file, bytes);
      },
    ],
    [
      'overwritten in the middle',
      (file) => {
        const bytes = readFileSync(file);
        for (let page = 4; page < 12; page += 1) bytes.fill(0x5a, page * 4096, page * 4096 + 600);
        writeFileSync(file, bytes);
      },
    ],
  ];

  it.each(damages)('is told as damaged and stays as it is when its file is %s', async (_, damage) => {
    const folder = await closedLibrary();
    damage(databaseIn(folder));
    const before = readFileSync(databaseIn(folder));
    const backend = openBackend({ libraryFolder: folder, appFolder });
    expect(await ask(backend, 'library.state', {})).toMatchObject({ kind: 'failed' });
    const problem = await refusal(backend, 'desk.sessions', {});
    expect(problem.code).toBe('library-damaged');
    expect(problem.sentence).toMatch(/damaged and was neither opened nor changed/);
    expect((await refusal(backend, 'library.create', { contents: 'empty', voice: 'coach' })).code).toBe(
      'library-damaged',
    );
    await backend.close();
    expect(readFileSync(databaseIn(folder)).equals(before)).toBe(true);
  });

  it('is told as newer and stays as it is when a later version has used it', async () => {
    const folder = await closedLibrary();
    alter(folder, 'PRAGMA user_version = 9000');
    const before = readFileSync(databaseIn(folder));
    const problem = await refusal(backendOn(folder), 'desk.sessions', {});
    expect(problem.code).toBe('library-newer');
    expect(problem.sentence).toMatch(/used by a newer Rackside/);
    expect(readFileSync(databaseIn(folder)).equals(before)).toBe(true);
  });

  it('is told when a step of its making is not the one this version knows', async () => {
    const folder = await closedLibrary();
    alter(folder, `UPDATE migration SET sha256 = '${'0'.repeat(64)}'`);
    expect((await refusal(backendOn(folder), 'desk.sessions', {})).code).toBe('library-newer');
  });

  it('is told when the file belongs to another program', async () => {
    const folder = temporaryFolder();
    alter(folder, 'PRAGMA application_id = 252006674; CREATE TABLE recipe (name TEXT)');
    const problem = await refusal(backendOn(folder), 'desk.sessions', {});
    expect(problem.sentence).toMatch(/is not a Rackside library/);
  });
});

describe('a library of an older version', () => {
  it('is copied whole into the backups before it is changed, and then changed', async () => {
    const folder = await closedLibrary();
    const newerApp = temporaryFolder();
    cpSync(path.join(appFolder, 'migrations'), path.join(newerApp, 'migrations'), { recursive: true });
    const next = String(readdirSync(path.join(newerApp, 'migrations')).length + 1).padStart(4, '0');
    const step = 'CREATE TABLE shelf (name TEXT) STRICT;';
    writeFileSync(path.join(newerApp, 'migrations', `${next}-shelf.sql`), step);
    const before = dump(folder);

    const backend = openBackend({ libraryFolder: folder, appFolder: newerApp });
    expect(await ask(backend, 'library.state', {})).toMatchObject({ kind: 'open' });
    await backend.close();

    const [backup = '', ...others] = readdirSync(path.join(folder, 'backups'));
    expect(others).toEqual([]);
    const restored = temporaryFolder();
    mkdirSync(restored, { recursive: true });
    cpSync(path.join(folder, 'backups', backup), databaseIn(restored));
    expect(dump(restored)).toBe(before);
    expect(await ask(backendOn(restored), 'library.state', {})).toMatchObject({ kind: 'open' });
    expect((await refusal(backendOn(folder), 'desk.sessions', {})).code).toBe('library-newer');
  });

  it('stays as it was when the step fails', async () => {
    const folder = await closedLibrary();
    const brokenApp = temporaryFolder();
    cpSync(path.join(appFolder, 'migrations'), path.join(brokenApp, 'migrations'), { recursive: true });
    const next = String(readdirSync(path.join(brokenApp, 'migrations')).length + 1).padStart(4, '0');
    writeFileSync(path.join(brokenApp, 'migrations', `${next}-slip.sql`), 'DELETE FROM session; DROP TABLE nowhere;');
    const before = dump(folder);
    const backend = openBackend({ libraryFolder: folder, appFolder: brokenApp });
    expect(await ask(backend, 'library.state', {})).toMatchObject({ kind: 'failed' });
    await backend.close();
    expect(dump(folder)).toBe(before);
    expect((await ask(backendOn(folder), 'desk.sessions', {})).sessions).toHaveLength(1);
  });
});
