import path from 'node:path';
import { rootFolder } from '../../../electron/launch/folders.ts';
import type { App } from './app.ts';
import { finishedJob, longestMs } from './jobs.ts';
import { until } from './until.ts';

/** Footage with known truth, by name. */
export const footage = {
  squat: path.join(rootFolder, 'seeds', 'footage', 'squat-side.mp4'),
  portrait: path.join(rootFolder, 'seeds', 'footage', 'press-portrait.mov'),
  hevc: path.join(rootFolder, 'tests', 'footage', 'hinge-hevc.mp4'),
  variableRate: path.join(rootFolder, 'tests', 'footage', 'squat-variable-rate.mp4'),
} as const;

export type OneClip = { readonly sessionId: string; readonly clipId: string };

/** Makes an empty library with one invented trainee, one session and one clip of a squat; gives the ids. */
export async function addOneClip(app: App, clip: string): Promise<OneClip> {
  await app.ask('library.create', { contents: 'empty', voice: 'coach' });
  const { traineeId } = await app.ask('trainees.add', {
    name: 'Trainee One',
    goal: 'growth',
    experience: 'new',
    units: 'kg',
    minor: false,
  });
  const { sessionId } = await app.ask('sessions.add', { traineeId, date: '2026-03-02' });
  const { exercises } = await app.ask('catalogue.get', {});
  const exercise = exercises.find(({ pattern }) => pattern === 'squat') ?? exercises[0];
  if (exercise === undefined) throw new Error('the catalogue is empty');
  const { jobIds } = await app.ask('clips.import', { sessionId, exercise: exercise.id, view: 'side', paths: [clip] });
  for (const jobId of jobIds) await finishedJob(app, jobId);
  // A clip that this browser can't play is converted by a second job.
  const { clipId } = await until(
    'the clip to be playable',
    async () => {
      const { media } = await app.ask('review.get', { sessionId });
      return media.find(({ ready }) => ready) ?? null;
    },
    longestMs,
  );
  return { sessionId, clipId };
}
