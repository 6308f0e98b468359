import { mkdtemp, stat, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { afterOpening, keepLibraries, readLibraries } from '../../../../electron/main/window/keptLibraries.ts';

const usual = '/home/ada/.config/Rackside/library';

test('the last one opened leads, once; the usual one is opened where no other was', () => {
  let kept = afterOpening({ open: null, recent: [] }, usual, usual);
  kept = afterOpening(kept, '/media/stick/club', usual);
  expect(kept).toEqual({ open: '/media/stick/club', recent: ['/media/stick/club', usual] });
  kept = afterOpening(kept, usual, usual);
  expect(kept).toEqual({ open: null, recent: [usual, '/media/stick/club'] });
});

test('eight are kept', () => {
  let kept = afterOpening({ open: null, recent: [] }, usual, usual);
  for (let number = 1; number <= 9; number += 1) kept = afterOpening(kept, `/l/${number}`, usual);
  expect(kept.recent).toEqual([9, 8, 7, 6, 5, 4, 3, 2].map((number) => `/l/${number}`));
});

test('what was kept is read again, by its owner alone; a damaged file counts as none', async () => {
  const file = path.join(await mkdtemp(path.join(os.tmpdir(), 'rackside-libraries-')), 'libraries.json');
  expect(readLibraries(file)).toEqual({ open: null, recent: [] });
  const kept = { open: '/media/stick/club', recent: ['/media/stick/club'] };
  await keepLibraries(file, kept);
  expect(readLibraries(file)).toEqual(kept);
  if (process.platform !== 'win32') expect((await stat(file)).mode & 0o777).toBe(0o600);
  await writeFile(file, '{"open": 3');
  expect(readLibraries(file)).toEqual({ open: null, recent: [] });
});
