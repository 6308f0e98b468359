import { renameSync } from 'node:fs';
import path from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { openBackend } from '../../../electron/backend/backend.ts';
import { appFolder, ask, backendOn, newLibrary, newSession, temporaryFolder } from './workbench.ts';

it('opens a library that another Rackside held, once that one is closed', async () => {
  const folder = temporaryFolder();
  const first = await newLibrary(folder);
  const { sessionId } = await newSession(first);
  const second = backendOn(folder);
  const told: string[] = [];
  second.onEvent(({ name }) => told.push(name));
  expect(await ask(second, 'library.state', {})).toMatchObject({ kind: 'failed', message: { id: 'libraryBusy' } });
  expect(told).toEqual([]);
  await first.close();
  expect(await ask(second, 'library.state', {})).toMatchObject({ kind: 'open', folder });
  expect(told).toEqual(['libraryChanged']);
  await ask(second, 'sessions.update', { sessionId, notes: 'Here again' });
  expect((await ask(second, 'review.get', { sessionId })).review.session.notes).toBe('Here again');
});

it('takes a library that was chosen before and is not there for one that is away, not for a first start', async () => {
  const folder = path.join(temporaryFolder(), 'stick');
  const first = await newLibrary(folder);
  await first.close();
  renameSync(folder, `${folder}-pulled`);
  const backend = openBackend({ libraryFolder: folder, appFolder, library: 'known' });
  onTestFinished(() => backend.close());
  expect(await ask(backend, 'library.state', {})).toEqual({
    ...{ kind: 'failed', message: { id: 'libraryAway', values: { folder } } },
  });
  renameSync(`${folder}-pulled`, folder);
  expect((await ask(backend, 'library.state', {})).kind).toBe('open');
});
