import { copyFileSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { sayJob } from '../../../../engine/wording/sayJob.ts';
import { ask, dump, jobEnd, newLibrary, newSession, refusal, squatFile, temporaryFolder } from '../workbench.ts';

const cases: readonly (readonly [string, (file: string) => void])[] = [
  ['is not there', () => undefined],
  ['is empty', (file) => writeFileSync(file, '')],
  ['is text', (file) => writeFileSync(file, 'not a film at all\n'.repeat(50))],
  ['was cut off', (file) => writeFileSync(file, readFileSync(squatFile).subarray(0, 200_000))],
];

it.each(cases)(
  'says in one sentence that a clip %s, leaves nothing behind, and takes it in once it is mended',
  async (_, make) => {
    const folder = temporaryFolder();
    const backend = await newLibrary(folder);
    const { sessionId, entryId } = await newSession(backend);
    const file = path.join(temporaryFolder(), 'set one.mp4');
    make(file);
    const before = dump(folder);
    const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, paths: [file] });
    const [jobId = ''] = jobIds;
    const failed = await jobEnd(backend, jobId);
    expect(failed.state).toBe('failed');
    const said = failed.message === null ? '' : sayJob(failed.message, 'en');
    expect(said).toMatch(/set one\.mp4.+\.$/);
    expect(said).not.toMatch(/\n|Error:/);
    expect(dump(folder)).toBe(before);
    expect([...readdirSync(path.join(folder, 'clips')), ...readdirSync(path.join(folder, 'pictures'))]).toEqual([]);

    copyFileSync(squatFile, file);
    await ask(backend, 'jobs.retry', { jobId });
    expect(await jobEnd(backend, jobId)).toMatchObject({ state: 'done', progress: 1 });
  },
);

it.each(['it\'s "the" set.mp4', '-dash first.mp4', 'lift 🏋️ süß.mp4', 'no extension', '  .mp4'])(
  'takes in a file named %j',
  async (name) => {
    const backend = await newLibrary();
    const { sessionId, entryId } = await newSession(backend);
    const file = path.join(temporaryFolder(), name);
    copyFileSync(squatFile, file);
    const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, paths: [file] });
    expect(await jobEnd(backend, jobIds[0] ?? '')).toMatchObject({ state: 'done' });
    const { review, media } = await ask(backend, 'review.get', { sessionId });
    expect(review.entries[0]?.clips[0]?.name).toBe(name.trim());
    expect(media[0]?.ready).toBe(true);
  },
);

it('asks where the clips belong', async () => {
  const backend = await newLibrary();
  const one = await newSession(backend);
  const two = await newSession(backend);
  const lost = await refusal(backend, 'clips.import', { sessionId: one.sessionId, paths: [squatFile] });
  expect(lost.code).toBe('bad-request');
  const strayed = { sessionId: one.sessionId, entryId: two.entryId, paths: [squatFile] };
  expect((await refusal(backend, 'clips.import', strayed)).code).toBe('conflict');
});
