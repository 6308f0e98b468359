import path from 'node:path';
import { expect, it } from 'vitest';
import { changeOnDisk } from '../changeOnDisk.ts';
import { appFolder, ask, jobEnd, jobWhen, newLibrary, newSession, refusal } from '../workbench.ts';

it('plays footage of a codec that the window lacks from a copy, frame for frame, once that is made', async () => {
  const backend = await newLibrary();
  const { sessionId, entryId } = await newSession(backend, 'romanian-deadlift');
  const file = path.join(appFolder, 'tests/footage/hinge-hevc.mp4');
  const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, paths: [file] });
  const { clipId } = await jobEnd(backend, jobIds[0] ?? '');
  const [before] = (await ask(backend, 'review.get', { sessionId })).media;
  expect(before).toMatchObject({
    clipId,
    ready: false,
    proxy: true,
    trouble: { id: 'playableCopyToCome', values: {} },
  });

  const jobs = await ask(backend, 'jobs.list', {});
  const proxyJob = jobs.find((job) => job.kind === 'proxy');
  expect(proxyJob).toMatchObject({
    sessionId,
    clipId,
    title: { id: 'playableCopyOf', values: { clip: 'hinge-hevc.mp4' } },
  });
  const [done] = await Promise.all([
    jobEnd(backend, proxyJob?.id ?? ''),
    jobWhen(backend, proxyJob?.id ?? '', (job) => (job.progress ?? 0) > 0),
  ]);
  expect(done.state).toBe('done');
  const [after] = (await ask(backend, 'review.get', { sessionId })).media;
  expect(after).toMatchObject({ ready: true, trouble: null, proxy: true });
  const { table, playback } = await ask(backend, 'clips.frameTable', { clipId: clipId ?? '' });
  expect(playback.ticks).toHaveLength(table.ticks.length);
  const resolved = await ask(backend, 'media.resolve', { clipId: clipId ?? '', what: 'clip' });
  expect(path.basename(resolved.path)).toMatch(/-proxy\.mp4$/);

  // A copy that the disk changed is not shown, and is made anew from the clip, which is as it was.
  changeOnDisk(resolved.path);
  expect((await refusal(backend, 'media.resolve', { clipId: clipId ?? '', what: 'clip' })).code).toBe('bad-media');
  const [changed] = (await ask(backend, 'review.get', { sessionId })).media;
  expect(changed).toMatchObject({ ready: false, trouble: { id: 'playableCopyAnew' } });
  const again = (await ask(backend, 'jobs.list', {})).find(({ id, kind }) => kind === 'proxy' && id !== proxyJob?.id);
  expect((await jobEnd(backend, again?.id ?? '')).state).toBe('done');
  expect((await ask(backend, 'review.get', { sessionId })).media[0]).toMatchObject({ ready: true, trouble: null });
});
