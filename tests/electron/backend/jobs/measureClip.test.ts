import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync, renameSync } from 'node:fs';
import path from 'node:path';
import { expect, it, onTestFinished, vi } from 'vitest';
import { alterLibrary } from '../alterLibrary.ts';
import { recordingsIn } from '../measure/measuredLibrary.ts';
import { ffmpeg } from '../media/clips.ts';
import {
  ask,
  backendOn,
  dump,
  jobEnd,
  jobWhen,
  nameInWords,
  newLibrary,
  newSession,
  preparedLibrary,
  squatFile,
  temporaryFolder,
} from '../workbench.ts';

it('records a clip, stores what it saw, and tells the session’s screens', async () => {
  const { folder, clipId, sessionId } = await preparedLibrary();
  const backend = backendOn(folder);
  const told: string[] = [];
  backend.onEvent((event) => {
    if (event.name === 'sessionChanged') told.push(event.data.sessionId);
  });
  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  expect((await ask(backend, 'measures.get', { clipId })).jobId).toBe(jobIds[0]);
  expect(await jobEnd(backend, jobIds[0] ?? '')).toMatchObject({
    ...{
      kind: 'measure',
      title: { id: 'measure', values: { clip: 'squat-side.mp4' } },
      state: 'done',
      sessionId,
      clipId,
    },
  });
  expect(told).toContain(sessionId);
  const { measurement, jobId } = await ask(backend, 'measures.get', { clipId });
  expect(jobId).toBeNull();
  expect(measurement?.reps).toHaveLength(3);
  expect((await ask(backend, 'review.get', { sessionId })).review.entries[0]?.clips[0]?.reps).toHaveLength(3);
});

it('records footage once for all clips that show it, and tells every session that has one', async () => {
  const { folder, clipId, traineeId, sessionId: firstSession } = await preparedLibrary();
  const backend = backendOn(folder);
  const { sessionId } = await ask(backend, 'sessions.add', { traineeId, date: '2026-03-05' });
  const { entryId } = await ask(backend, 'entries.add', { sessionId, exercise: 'front-squat' });
  const imported = await ask(backend, 'clips.import', { sessionId, entryId, view: 'side', paths: [squatFile] });
  const other = (await jobEnd(backend, imported.jobIds[0] ?? '')).clipId ?? '';
  const told: string[] = [];
  backend.onEvent((event) => {
    if (event.name === 'sessionChanged') told.push(event.data.sessionId);
  });
  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  for (const jobId of jobIds) expect((await jobEnd(backend, jobId)).state).toBe('done');
  expect([...told].sort()).toEqual([firstSession, sessionId].sort());
  const again = await ask(backend, 'measures.start', { clipIds: [other], joints: false });
  expect((await jobEnd(backend, again.jobIds[0] ?? '')).state).toBe('done');
  expect(recordingsIn(folder)).toHaveLength(1);
  expect((await ask(backend, 'measures.get', { clipId: other })).measurement?.reps).toHaveLength(3);
});

it('keeps the recording of a clip that is only read here, and leaves its reps alone', async () => {
  const { folder, clipId, sessionId } = await preparedLibrary();
  makeReadOnly(folder);
  const backend = backendOn(folder);
  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  expect(await jobEnd(backend, jobIds[0] ?? '')).toMatchObject({ state: 'done', sessionId, clipId });
  expect(recordingsIn(folder)).toHaveLength(1);
  expect((await ask(backend, 'measures.get', { clipId })).measurement?.reps).toHaveLength(3);
  const { review, history } = await ask(backend, 'review.get', { sessionId });
  expect(review.entries[0]?.clips[0]?.reps).toEqual([]);
  expect(nameInWords(history.undo)).not.toMatch(/^Measured/);
});

it('changes nothing when it is cancelled, and can be tried again', async () => {
  const { folder, clipId } = await preparedLibrary();
  const backend = backendOn(folder);
  const before = dump(folder);
  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  const [jobId = ''] = jobIds;
  await jobWhen(backend, jobId, (job) => job.state === 'running');
  await ask(backend, 'jobs.cancel', { jobId });
  expect(await jobEnd(backend, jobId)).toMatchObject({ state: 'cancelled' });
  expect(dump(folder)).toBe(before);
  expect(recordingsIn(folder)).toEqual([]);
  await ask(backend, 'jobs.retry', { jobId });
  expect(await jobEnd(backend, jobId)).toMatchObject({ state: 'done' });
});

it('is taken up again when the process was killed in the middle, and marks the reps once', async () => {
  const { folder, clipId, sessionId } = await preparedLibrary();
  const script = path.join(import.meta.dirname, '../faults/measureUntil.ts');
  const child = spawn(process.execPath, [script, folder, clipId, '0.4'], { stdio: ['ignore', 'pipe', 'inherit'] });
  onTestFinished(() => void child.kill('SIGKILL'));
  await once(child, 'exit');
  expect(child.signalCode).toBe('SIGKILL');
  expect(recordingsIn(folder)).toEqual([]);

  const backend = backendOn(folder);
  const job = (await ask(backend, 'jobs.list', {})).find(({ kind }) => kind === 'measure');
  expect(await jobEnd(backend, job?.id ?? '')).toMatchObject({ state: 'done' });
  const { review, history } = await ask(backend, 'review.get', { sessionId });
  expect(review.entries[0]?.clips[0]?.reps).toHaveLength(3);
  expect(nameInWords(history.undo)).toBe('Measured: 3 reps');
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true });
});

it('says in one sentence that the file is missing, and stops for a clip that goes, to begin anew when it is back', async () => {
  const { folder, clipId, sessionId } = await preparedLibrary();
  const backend = backendOn(folder);
  const { path: file } = await ask(backend, 'media.resolve', { clipId, what: 'clip' });
  renameSync(file, `${file}.away`);
  const missing = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  expect(await jobEnd(backend, missing.jobIds[0] ?? '')).toMatchObject({
    state: 'failed',
    sentence: expect.stringMatching(/^The file “clips\/.*” is missing, so “squat-side\.mp4” was not measured; .*\.$/),
  });
  renameSync(`${file}.away`, file);

  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  await jobWhen(backend, jobIds[0] ?? '', (job) => job.state === 'running');
  await ask(backend, 'clips.remove', { clipId });
  expect(await jobEnd(backend, jobIds[0] ?? '')).toMatchObject({ state: 'cancelled' });
  await ask(backend, 'history.undo', { sessionId });
  const again = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  expect(await jobEnd(backend, again.jobIds[0] ?? '')).toMatchObject({ state: 'done', clipId });
  expect((await ask(backend, 'measures.get', { clipId })).measurement?.reps).toHaveLength(3);
});

/** Makes every session of a closed library one that came from another desk. */
function makeReadOnly(folder: string): void {
  alterLibrary(folder, 'UPDATE session SET read_only = 1');
}

it('says in the log when the joints are looked for without the native library', async () => {
  const folder = temporaryFolder();
  const clip = path.join(folder, 'short.mp4');
  await ffmpeg('-i', squatFile, '-frames:v', '4', '-c:v', 'libx264', '-an', clip);
  const backend = await newLibrary(folder);
  const { sessionId, entryId } = await newSession(backend, 'front-squat');
  const imported = await ask(backend, 'clips.import', { sessionId, entryId, view: 'side', paths: [clip] });
  const { clipId } = await jobEnd(backend, imported.jobIds[0] ?? '');
  vi.stubEnv('RACKSIDE_JOINTS', 'wasm');
  onTestFinished(() => void vi.unstubAllEnvs());
  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId ?? ''], joints: true });
  expect((await jobEnd(backend, jobIds[0] ?? '')).state).toBe('done');
  const logged = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.log'));
  const lines = logged.map((name) => readFileSync(path.join(folder, name), 'utf8')).join('');
  expect(lines).toContain('joints without the native library');
});
