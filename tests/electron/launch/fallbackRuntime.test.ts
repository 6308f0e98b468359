import { mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { arrangeRuntime } from '../../../electron/launch/fallbackRuntime.ts';

test('an unpacked distribution becomes a bare runtime that opens the folder it is given', async () => {
  const home = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  const top = path.join(home, 'Thing');
  await mkdir(path.join(top, 'resources', 'app', 'node_modules'), { recursive: true });
  await writeFile(path.join(top, 'Thing'), 'binary');
  await writeFile(path.join(top, 'resources', 'app', 'index.js'), 'its own app');
  await writeFile(path.join(top, 'resources', 'update.yml'), 'its own updates');
  await writeFile(path.join(top, 'LICENSE.electron.txt'), 'licence');

  const folder = await arrangeRuntime(home);

  expect((await readdir(folder)).sort()).toEqual(['LICENSE.electron.txt', 'electron', 'resources']);
  expect((await stat(path.join(folder, 'electron'))).mode & 0o111).toBe(0o111);
  expect(await readdir(path.join(folder, 'resources'))).toEqual(['app']);
  const facts = JSON.parse(await readFile(path.join(folder, 'resources', 'app', 'package.json'), 'utf8'));
  expect(await readdir(path.join(folder, 'resources', 'app'))).toContain(facts.main);
  await rm(home, { recursive: true });
});

test('an empty archive is refused', async () => {
  const home = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  await expect(arrangeRuntime(home)).rejects.toThrow();
  await rm(home, { recursive: true });
});
