import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { expect, it, onTestFinished } from 'vitest';
import { ask, backendOn, preparedLibrary } from '../workbench.ts';

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
  expect(history.undo).toBe('Flag: Depth, whole set');
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true, findings: [] });
});
