import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { chooseFromFile, chosenPathsFile } from '../../../../electron/main/bridge/systemDialogs.ts';

test('a test names the file with its answers, and nobody else can', () => {
  expect(chosenPathsFile({ RACKSIDE_TEST: '1', RACKSIDE_CHOSEN_PATHS: '/x.json' })).toBe('/x.json');
  expect(chosenPathsFile({ RACKSIDE_CHOSEN_PATHS: '/x.json' })).toBeNull();
  expect(chosenPathsFile({ RACKSIDE_TEST: '0', RACKSIDE_CHOSEN_PATHS: '/x.json' })).toBeNull();
  expect(chosenPathsFile({ RACKSIDE_TEST: '1', RACKSIDE_CHOSEN_PATHS: '' })).toBeNull();
  expect(chosenPathsFile({})).toBeNull();
});

test('the file is read anew at every question', async () => {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  const file = path.join(folder, 'chosen.json');
  const chooser = chooseFromFile(file);
  await writeFile(file, JSON.stringify({ save: '/a/letter.pdf', open: ['/b.mp4'] }));
  expect(await chooser.whereToSave({ name: 'letter', extension: 'pdf' })).toBe('/a/letter.pdf');
  expect(await chooser.whichClips()).toEqual(['/b.mp4']);
  await writeFile(file, '{}');
  expect(await chooser.whereToSave({ name: 'letter', extension: 'pdf' })).toBeNull();
  expect(await chooser.whichClips()).toEqual([]);
  await rm(folder, { recursive: true });
});
