import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { backendHostFor, forkBackend } from '../../../../electron/main/backend/backendProcess.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  // Answers every message with its own kind, and a Map, which only the advanced way of sending carries.
  await writeFile(
    path.join(folder, 'echo.mjs'),
    `process.on('message', (message) => {
       if (message.kind === 'close') process.exit(0);
       process.send({ kind: message.kind, map: new Map([['node', process.versions.napi]]) });
     });`,
  );
});
afterAll(() => rm(folder, { recursive: true }));

test('messages go both ways, and the end of the process is told', async () => {
  const backend = forkBackend(path.join(folder, 'echo.mjs'), process.execPath);
  const exited = new Promise<void>((resolve) => backend.onExit(resolve));
  const heard = new Promise<unknown>((resolve) => backend.onMessage(resolve));
  backend.post({ kind: 'open', settings: { libraryFolder: '/l', appFolder: '/a' } });
  expect(await heard).toEqual({ kind: 'open', map: new Map([['node', process.versions.napi]]) });
  backend.post({ kind: 'close' });
  await exited;
  backend.post({ kind: 'close' });
});

test('a killed process tells its end', async () => {
  const backend = forkBackend(path.join(folder, 'echo.mjs'), process.execPath);
  const exited = new Promise<void>((resolve) => backend.onExit(resolve));
  backend.kill();
  await exited;
});

test('a Node that is not there counts as an end', async () => {
  const backend = forkBackend(path.join(folder, 'echo.mjs'), path.join(folder, 'no-node'));
  await new Promise<void>((resolve) => backend.onExit(resolve));
});

// Versions of Node's native interface by release, from nodejs.org/api/n-api.html: 9 came with 20.3, 10 with 22.14.
test.each([
  ['9', 'fork'],
  ['10', 'utility'],
  ['11', 'utility'],
  [undefined, 'fork'],
])('with native interface %s the backend is started by %s', (version, host) => {
  expect(backendHostFor(version)).toBe(host);
});
