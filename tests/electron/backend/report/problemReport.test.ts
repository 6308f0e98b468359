import { readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { ask, backendOn, preparedLibrary, refusal, temporaryFolder } from '../workbench.ts';

it('tells versions, what is wrong with the library, and the log; nothing of people', async () => {
  const { folder, sessionId } = await preparedLibrary();
  const backend = backendOn(folder);
  await ask(backend, 'sessions.update', { sessionId, notes: 'Slept badly', painNote: 'Left knee' });
  const { review } = await ask(backend, 'review.get', { sessionId });
  const file = (await ask(backend, 'media.resolve', { clipId: review.entries[0]?.clips[0]?.id ?? '', what: 'clip' }))
    .path;
  rmSync(file);
  const report = path.join(temporaryFolder(), 'report.txt');
  expect(await ask(backend, 'report.write', { path: report })).toEqual({ path: report });
  const text = readFileSync(report, 'utf8');
  expect(text).toMatch(/^Rackside problem report\n\nVersions\nRackside \d+\.\d+\.\d+\nLibrary format \d+/);
  expect(text).toContain('Library\n1 sessions, 1 clips\n');
  expect(text).toContain(`Verified\nThe file "clips/${path.basename(file)}" is missing.\n`);
  expect(text).toMatch(/Log\n.* info opened /);
  for (const word of ['Mira', 'Holt', 'Quill', 'Slept', 'knee', 'squat', folder]) expect(text).not.toContain(word);
});

it('is not written into the library itself', async () => {
  const { folder } = await preparedLibrary();
  const backend = backendOn(folder);
  for (const name of ['rackside.sqlite', 'rackside.log', 'clips/report.txt']) {
    expect((await refusal(backend, 'report.write', { path: path.join(folder, name) })).code).toBe('conflict');
  }
});
