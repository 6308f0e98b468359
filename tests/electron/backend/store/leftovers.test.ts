import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { libraryFolder, makeFolders, sweepParts } from '../../../../electron/backend/store/folder.ts';

let home = '';
beforeEach(() => {
  home = mkdtempSync(path.join(os.tmpdir(), 'rackside-leftovers-'));
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

it('what a killed process left half written goes, and nothing else', () => {
  const folder = libraryFolder(home);
  makeFolders(folder);
  const names = ['clip.mp4', '3f2a.part', '.unfinished-3f2a.mp4', 'copy.sqlite.part', 'copy.sqlite.part-journal'];
  for (const name of names) writeFileSync(path.join(folder.clips, name), 'x');
  sweepParts(folder);
  expect(readdirSync(folder.clips)).toEqual(['clip.mp4']);
});
