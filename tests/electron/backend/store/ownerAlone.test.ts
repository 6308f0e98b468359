import { chmodSync, existsSync, lstatSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { backUp } from '../../../../electron/backend/store/backup.ts';
import { openLibrary } from '../../../../electron/backend/store/library.ts';
import { appFolder, ask, backendOn, newLibrary, preparedLibrary, temporaryFolder } from '../workbench.ts';

const inFolder = (folder: string): string[] => [
  folder,
  ...readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => path.join(folder, name)),
];

/** What other users of the machine could read, write or enter. */
const openToOthers = (folder: string): string[] =>
  inFolder(folder)
    .filter((each) => !lstatSync(each).isSymbolicLink() && (lstatSync(each).mode & 0o077) !== 0)
    .map((each) => path.relative(folder, each));

const logOf = (folder: string): string => readFileSync(path.join(folder, 'rackside.log'), 'utf8');

// Windows keeps who may read a file elsewhere.
describe.skipIf(process.platform === 'win32')('a library on the disk', () => {
  it('is its owner’s alone from its first moment on: clips, pictures, backups, log and all', async () => {
    const { folder } = await preparedLibrary();
    const library = openLibrary(folder, appFolder);
    if (library) backUp(library.writing, library.folder, 'by-hand');
    expect(openToOthers(folder)).toEqual([]);
    library?.close();
    const names = inFolder(folder).map((each) => path.extname(each));
    expect(names).toEqual(expect.arrayContaining(['.mp4', '.jpg', '.sqlite', '.log', '.lock']));
    expect(openToOthers(folder)).toEqual([]);
    expect(lstatSync(folder).mode & 0o777).toBe(0o700);
    expect(lstatSync(path.join(folder, 'rackside.sqlite')).mode & 0o777).toBe(0o600);
  });

  it('that others could read is closed to them when it is opened, and the log says so once', async () => {
    const folder = temporaryFolder();
    await (await newLibrary(folder)).close();
    const pictures = path.join(folder, 'pictures', 'framed-1');
    mkdirSync(pictures);
    writeFileSync(path.join(pictures, 'poster.jpg'), '');
    writeFileSync(path.join(folder, 'pictures', 'read-only.jpg'), '');
    for (const each of inFolder(folder)) chmodSync(each, lstatSync(each).isDirectory() ? 0o755 : 0o644);
    chmodSync(path.join(folder, 'pictures', 'read-only.jpg'), 0o400);
    // Not the library's own: whoever put it there knows why.
    writeFileSync(path.join(folder, 'notes.txt'), '', { mode: 0o644 });

    await backendOn(folder).close();
    expect(openToOthers(folder)).toEqual(['notes.txt']);
    expect(lstatSync(path.join(folder, 'pictures', 'read-only.jpg')).mode & 0o777).toBe(0o400);
    await backendOn(folder).close();
    expect(logOf(folder).match(/closed to other users/g)).toHaveLength(1);
  });
});

it('what was only needed for a while is gone when the library is opened again', async () => {
  const folder = temporaryFolder();
  await (await newLibrary(folder)).close();
  mkdirSync(path.join(folder, 'temporary', 'rackside-stills-x'));
  writeFileSync(path.join(folder, 'temporary', 'rackside-stills-x', 'still.jpg'), 'picture');
  writeFileSync(path.join(folder, 'temporary', 'rackside-voice-x'), 'voice');
  const backend = backendOn(folder);
  expect(readdirSync(path.join(folder, 'temporary'))).toEqual([]);
  expect((await ask(backend, 'library.state', {})).kind).toBe('open');
  expect(existsSync(path.join(folder, 'clips'))).toBe(true);
});
