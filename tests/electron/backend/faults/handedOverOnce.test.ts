import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { ask, backendOn, jobEnd, newLibrary, newSession, temporaryFolder } from '../workbench.ts';

it.each([
  ['before', 'zip'],
  ['after', ''],
] as const)('hands over once when the process is killed %s the naming of what it wrote %s', async (moment, zip) => {
  const folder = temporaryFolder();
  const out = temporaryFolder();
  const first = await newLibrary(folder);
  const { sessionId } = await newSession(first);
  await first.close();
  const script = path.join(import.meta.dirname, 'handOverUntil.ts');
  const child = spawn(process.execPath, [script, folder, sessionId, out, moment, zip], { stdio: 'inherit' });
  await once(child, 'exit');
  expect(child.signalCode).toBe('SIGKILL');

  const backend = backendOn(folder);
  const [job] = await ask(backend, 'jobs.list', {});
  expect(await jobEnd(backend, job?.id ?? '')).toMatchObject({ state: 'done' });
  const name = `2026-03-04-mira-holt${zip === 'zip' ? '.zip' : ''}`;
  expect(readdirSync(out)).toEqual([name]);
  const { versions, deliveries } = await ask(backend, 'handover.list', { sessionId });
  expect(versions).toHaveLength(1);
  expect(deliveries).toMatchObject([{ version: 1, path: path.join(out, name) }]);
  if (zip === '') expect(existsSync(path.join(out, name, 'index.html'))).toBe(true);
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true, findings: [] });
});
