import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { expect, it, onTestFinished } from 'vitest';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import { commandLine, processIds } from '../../../e2e/harness/processes.ts';
import {
  appFolder,
  ask,
  backendOn,
  nameInWords,
  newLibrary,
  newSession,
  preparedLibrary,
  temporaryFolder,
} from '../workbench.ts';

it.each([1, 7, 40])('keeps every acknowledged flag when the process is killed after %i of them', async (least) => {
  const { folder, clipId, sessionId } = await preparedLibrary();
  const script = path.join(import.meta.dirname, 'flagLoop.ts');
  const child = spawn(process.execPath, [script, folder, clipId], { stdio: ['ignore', 'pipe', 'inherit'] });
  onTestFinished(() => void child.kill('SIGKILL'));
  const acknowledged: string[] = [];
  const lines = createInterface({ input: child.stdout });
  lines.on('line', (line) => {
    acknowledged.push(line);
    if (acknowledged.length === least) child.kill('SIGKILL');
  });
  await Promise.all([once(lines, 'close'), once(child, 'exit')]);
  expect(acknowledged.length).toBeGreaterThanOrEqual(least);

  const backend = backendOn(folder);
  const { review, history } = await ask(backend, 'review.get', { sessionId });
  const there = new Set(review.entries.flatMap((entry) => entry.flags.map((flag) => flag.id)));
  expect(acknowledged.filter((id) => !there.has(id))).toEqual([]);
  expect(nameInWords(history.undo)).toBe('Flag: Depth, whole set');
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true, findings: [] });
});

it('leaves no ffmpeg running when the process is killed in the middle of a playable copy', async () => {
  const folder = temporaryFolder();
  const first = await newLibrary(folder);
  const { sessionId, entryId } = await newSession(first, 'romanian-deadlift');
  await first.close();
  const file = path.join(folder, 'long.mp4');
  const { ffmpeg } = await findMediaTools();
  const source = path.join(appFolder, 'tests/footage/hinge-hevc.mp4');
  execFileSync(ffmpeg.path, ['-v', 'error', '-stream_loop', '20', '-i', source, '-c', 'copy', file]);
  onTestFinished(async () => {
    for (const id of await processesOn(folder)) process.kill(id, 'SIGKILL');
  });

  const script = path.join(import.meta.dirname, 'proxyUntil.ts');
  const child = spawn(process.execPath, [script, folder, sessionId, entryId, file], { stdio: 'inherit' });
  onTestFinished(() => void child.kill('SIGKILL'));
  await once(child, 'exit');
  expect(child.signalCode).toBe('SIGKILL');
  await expect.poll(() => processesOn(folder), { timeout: 3_000 }).toEqual([]);
});

/** The processes that were told of files in a folder. */
async function processesOn(folder: string): Promise<readonly number[]> {
  const lines = await Promise.all((await processIds()).map(async (id) => ({ id, line: await commandLine(id) })));
  return lines.filter(({ line }) => line.includes(folder)).map(({ id }) => id);
}
