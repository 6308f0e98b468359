import path from 'node:path';
import { expect, it } from 'vitest';
import { ffmpeg } from '../media/clips.ts';
import { ask, jobEnd, newLibrary, newSession, squatFile, temporaryFolder } from '../workbench.ts';

it('plays a camera’s transport stream from a copy, frame for frame', async () => {
  const file = path.join(temporaryFolder(), 'camera.ts');
  await ffmpeg('-i', squatFile, '-frames:v', '60', '-c:v', 'copy', '-an', file);
  const backend = await newLibrary();
  const { sessionId, entryId } = await newSession(backend, 'back-squat');
  const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, paths: [file] });
  const imported = await jobEnd(backend, jobIds[0] ?? '');
  expect(imported).toMatchObject({ state: 'done', sentence: '' });
  const clipId = imported.clipId ?? '';
  const proxy = (await ask(backend, 'jobs.list', {})).find(({ kind }) => kind === 'proxy');
  expect(await jobEnd(backend, proxy?.id ?? '')).toMatchObject({ state: 'done', sentence: '' });

  const [media] = (await ask(backend, 'review.get', { sessionId })).media;
  expect(media).toMatchObject({ clipId, ready: true, trouble: null, proxy: true });
  const { table, playback } = await ask(backend, 'clips.frameTable', { clipId });
  // The footage has 30 frames a second; MPEG-TS counts 90,000 ticks.
  expect(table.timeBase).toEqual({ numerator: 1, denominator: 90_000 });
  const [first = 0] = table.ticks;
  expect(table.ticks).toEqual(Array.from({ length: 60 }, (_, frame) => first + frame * 3_000));
  expect(playback.ticks).toHaveLength(60);
  const { path: copy } = await ask(backend, 'media.resolve', { clipId, what: 'clip' });
  const shown = await ffmpeg('-i', copy, '-vf', 'scale=16:9:flags=area,format=gray', '-f', 'rawvideo', '-');
  const filmed = await ffmpeg(
    '-i',
    squatFile,
    '-frames:v',
    '60',
    '-vf',
    'scale=16:9:flags=area,format=gray',
    '-f',
    'rawvideo',
    '-',
  );
  expect(shown.length).toBe(filmed.length);
  const farthest = shown.reduce((most, grey, at) => Math.max(most, Math.abs(grey - (filmed[at] ?? 0))), 0);
  expect(farthest).toBeLessThanOrEqual(6);
});
