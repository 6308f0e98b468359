import { create } from 'zustand';
import type { Job } from '../../electron/contract/jobs.ts';
import { read } from '../bridge/read.ts';

type JobsState = {
  readonly jobs: readonly Job[];
  readonly refresh: () => Promise<void>;
  readonly upsert: (job: Job) => void;
  /** Takes finished jobs off the list; running ones stay. */
  readonly clearFinished: () => void;
};

const isOver = (job: Job): boolean => job.state === 'done' || job.state === 'cancelled';

/** Long work, newest last. */
export const jobsState = create<JobsState>()((set) => ({
  jobs: [],
  refresh: async () => {
    const jobs = await read('jobs.list', {});
    if (jobs !== null) set({ jobs });
  },
  upsert: (job) =>
    set(({ jobs }) => ({
      jobs: jobs.some((known) => known.id === job.id)
        ? jobs.map((known) => (known.id === job.id ? job : known))
        : [...jobs, job],
    })),
  clearFinished: () => set(({ jobs }) => ({ jobs: jobs.filter((job) => !isOver(job) && job.state !== 'failed') })),
}));

/** Jobs that wait or run. */
export const isUnderWay = ({ state }: Job): boolean => state === 'waiting' || state === 'running';

/** Jobs somebody may want to see: still open, or failed. */
export const isOpenJob = (job: Job): boolean => !isOver(job);
