import { existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { forgetRecentFiles, keepRecentFilesApart } from '../../../../electron/main/window/recentFiles.ts';

// A chooser of GTK 3 and 4 writes `recently-used.xbel` into the data folder of its process: XDG Base Directory, `$XDG_DATA_HOME`.
test('gives the chooser on Linux a data folder of its own, and no other system one', () => {
  const environment: Record<string, string | undefined> = { HOME: '/home/ada' };
  keepRecentFilesApart('darwin', environment, '/profile/chosen');
  keepRecentFilesApart('win32', environment, '/profile/chosen');
  expect(environment).toEqual({ HOME: '/home/ada' });
  keepRecentFilesApart('linux', environment, '/profile/chosen');
  expect(environment.XDG_DATA_HOME).toBe('/profile/chosen');
});

test('forgets what was chosen before, and lets nobody else look', () => {
  const folder = path.join(mkdtempSync(path.join(tmpdir(), 'rackside-recent-')), 'chosen');
  onTestFinished(() => rmSync(path.dirname(folder), { recursive: true, force: true }));
  forgetRecentFiles('linux', folder);
  writeFileSync(path.join(folder, 'recently-used.xbel'), 'file:///home/ada/Robin.mp4');
  forgetRecentFiles('linux', folder);
  expect(existsSync(path.join(folder, 'recently-used.xbel'))).toBe(false);
  if (process.platform !== 'win32') expect(statSync(folder).mode & 0o777).toBe(0o700);
});
