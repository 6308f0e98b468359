import type { Job } from '../../../electron/contract/jobs.ts';

/** The newest job that measures a clip, unless it is done. */
export const openMeasuring = (jobs: readonly Job[], clipId: string): Job | null => {
  const newest = jobs.findLast((job) => job.kind === 'measure' && job.clipId === clipId);
  return newest === undefined || newest.state === 'done' ? null : newest;
};

export const isUnderWay = (job: Job | null): job is Job =>
  job !== null && (job.state === 'waiting' || job.state === 'running');
