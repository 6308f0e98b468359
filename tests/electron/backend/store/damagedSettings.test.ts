import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { ask, backendOn, newLibrary, temporaryFolder } from '../workbench.ts';

it('opens a library whose setting the disk changed, with its usual value, and says so until something is set', async () => {
  const folder = temporaryFolder();
  const first = await newLibrary(folder);
  await ask(first, 'settings.change', { daysPromised: 7, measureByItself: false });
  await first.close();
  // A connection of its own keeps no digests, as a fault of the disk does not.
  const database = new Database(path.join(folder, 'rackside.sqlite'));
  database.exec("UPDATE setting SET value = '9' WHERE name = 'daysPromised'");
  database.close();

  const backend = backendOn(folder);
  expect((await ask(backend, 'library.state', {})).kind).toBe('open');
  // 3 days are usual; what was not changed on the disk is as it was set.
  expect(await ask(backend, 'settings.get', {})).toMatchObject({ daysPromised: 3, measureByItself: false });
  expect(await ask(backend, 'settings.damaged', {})).toBe(true);
  expect((await ask(backend, 'library.verify', {})).findings.join(' ')).toMatch(/"setting"/);

  await ask(backend, 'settings.change', { daysPromised: 5 });
  expect(await ask(backend, 'settings.get', {})).toMatchObject({ daysPromised: 5, measureByItself: false });
  expect(await ask(backend, 'settings.damaged', {})).toBe(false);
  expect((await ask(backend, 'library.verify', {})).findings).toEqual([]);
});
