import { mkdtemp, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { runtimeFacts } from '../../../../electron/main/about/runtimeFacts.ts';

const folder = (): Promise<string> => mkdtemp(path.join(os.tmpdir(), 'rackside-about-'));
const parts = {
  version: '1.2.3',
  dataFolder: '/data',
  versions: { electron: '45.0.0', chrome: '150.0.1', napi: '10' },
};

test('a package tells what it was made from, a checkout does not', async () => {
  const appPath = await folder();
  expect(runtimeFacts({ ...parts, appPath }).build).toBeNull();
  await writeFile(path.join(appPath, 'build.json'), '{"commit":"abc1234","date":"2026-11-30"}');
  expect(runtimeFacts({ ...parts, appPath })).toEqual({
    build: { commit: 'abc1234', date: '2026-11-30' },
    electron: '45.0.0',
    chromium: '150.0.1',
    isOutdated: false,
    dataFolder: '/data',
  });
});

test('a runtime of Node-API 9 is out of date', () => {
  expect(runtimeFacts({ ...parts, appPath: '/nowhere', versions: { napi: '9' } }).isOutdated).toBe(true);
});
