import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import {
  ask,
  backendOn,
  dump,
  hingeFile,
  jobEnd,
  jobWhen,
  newLibrary,
  newSession,
  refusal,
  squatFile,
  temporaryFolder,
} from '../workbench.ts';

const filesIn = (folder: string) =>
  ['clips', 'pictures']
    .flatMap((each) => readdirSync(path.join(folder, each)))
    .filter((name) => name.endsWith('.part'));

it('cancels a job that runs and one that waits, leaves nothing behind, and runs them again when asked', async () => {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const { sessionId, entryId } = await newSession(backend);
  const before = dump(folder);
  const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, paths: [squatFile, hingeFile] });
  const [first = '', second = ''] = jobIds;
  await jobWhen(backend, first, (job) => job.state === 'running');
  await ask(backend, 'jobs.cancel', { jobId: second });
  await ask(backend, 'jobs.cancel', { jobId: first });
  const ends = [await jobEnd(backend, first), await jobEnd(backend, second)];
  expect(ends.map((job) => job.state)).toEqual(['cancelled', 'cancelled']);
  expect(dump(folder)).toBe(before);
  expect(readdirSync(path.join(folder, 'clips'))).toEqual([]);
  expect((await refusal(backend, 'jobs.cancel', { jobId: first })).code).toBe('conflict');

  for (const jobId of jobIds) await ask(backend, 'jobs.retry', { jobId });
  expect(await jobEnd(backend, second)).toMatchObject({ state: 'done', clipId: expect.any(String) });
  expect((await refusal(backend, 'jobs.retry', { jobId: second })).code).toBe('conflict');
});

it('takes up at the next opening what a quit interrupted', async () => {
  const folder = temporaryFolder();
  const first = await newLibrary(folder);
  const { sessionId, entryId } = await newSession(first);
  const { jobIds } = await ask(first, 'clips.import', { sessionId, entryId, paths: [squatFile, hingeFile] });
  await jobWhen(first, jobIds[0] ?? '', (job) => job.state === 'running');
  await first.close();
  expect(filesIn(folder)).toEqual([]);

  const second = backendOn(folder);
  for (const jobId of jobIds) expect(await jobEnd(second, jobId)).toMatchObject({ state: 'done' });
  const { review } = await ask(second, 'review.get', { sessionId });
  expect(review.entries[0]?.clips.map((clip) => clip.name)).toEqual(['squat-side.mp4', 'hinge-side.mp4']);
});

it('does not run a cancelled job again after a quit that came before it had stopped', async () => {
  const folder = temporaryFolder();
  const first = await newLibrary(folder);
  const { sessionId, entryId } = await newSession(first);
  const { jobIds } = await ask(first, 'clips.import', { sessionId, entryId, paths: [squatFile, hingeFile] });
  const [cancelled = '', waiting = ''] = jobIds;
  await jobWhen(first, cancelled, (job) => job.state === 'running');
  await ask(first, 'jobs.cancel', { jobId: cancelled });
  await first.close();

  const second = backendOn(folder);
  expect(await jobEnd(second, waiting)).toMatchObject({ state: 'done' });
  expect(await jobEnd(second, cancelled)).toMatchObject({ state: 'cancelled' });
});

it.each(['running', 'copying', 'makingPictures'])(
  'takes a clip in once when the process is killed at "%s"',
  async (moment) => {
    const folder = temporaryFolder();
    const first = await newLibrary(folder);
    const { sessionId, entryId } = await newSession(first);
    await first.close();
    const script = path.join(import.meta.dirname, '../faults/importUntil.ts');
    const child = spawn(process.execPath, [script, folder, sessionId, entryId, squatFile, moment], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    onTestFinished(() => void child.kill('SIGKILL'));
    await once(child, 'exit');
    expect(child.signalCode).toBe('SIGKILL');

    const second = backendOn(folder);
    const [job] = await ask(second, 'jobs.list', {});
    expect(await jobEnd(second, job?.id ?? '')).toMatchObject({ state: 'done' });
    const { review, media } = await ask(second, 'review.get', { sessionId });
    expect(review.entries[0]?.clips).toHaveLength(1);
    expect(media[0]).toMatchObject({ ready: true, hasPoster: true });
    expect(filesIn(folder)).toEqual([]);
    expect(await ask(second, 'library.verify', {})).toMatchObject({ sound: true });
  },
);

it('fails a clip whose exercise was taken out while it waited', async () => {
  const backend = await newLibrary();
  const { sessionId, entryId } = await newSession(backend);
  const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, paths: [squatFile] });
  await ask(backend, 'entries.remove', { entryId });
  const job = await jobEnd(backend, jobIds[0] ?? '');
  expect(job).toMatchObject({ state: 'failed', message: { id: 'entryGone' } });
});
