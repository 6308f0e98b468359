import { create } from 'zustand';
import type { Job } from '../../electron/contract/jobs.ts';
import { read } from '../bridge/read.ts';
import { oneReadAtATime } from './oneReadAtATime.ts';

type JobsState = {
  readonly jobs: readonly Job[];
  /** The ids of what waits to be measured, in the order it is taken up. */
  readonly line: readonly string[];
  readonly refreshLine: () => Promise<void>;
  readonly refresh: () => Promise<void>;
  readonly upsert: (job: Job) => void;
  /** Takes finished jobs off the list; running ones stay. */
  readonly clearFinished: () => void;
};

const isOver = (job: Job): boolean => job.state === 'done' || job.state === 'cancelled';

const refreshLine = oneReadAtATime(async () => {
  const line = await read('jobs.line', {});
  if (line !== null) jobsState.setState({ line });
});

/** Long work, newest last. */
export const jobsState = create<JobsState>()((set) => ({
  jobs: [],
  line: [],
  refreshLine,
  refresh: async () => {
    const jobs = await read('jobs.list', {});
    if (jobs !== null) set({ jobs });
    await refreshLine();
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

/** What runs first, then what waits: the line in its order, the rest as it was asked for; then what failed. */
export function inLineOrder(jobs: readonly Job[], line: readonly string[]): readonly Job[] {
  const places = new Map(line.map((id, place) => [id, place]));
  const stage = ({ state }: Job): number => (state === 'running' ? 0 : state === 'waiting' ? 1 : 2);
  const place = ({ id, state }: Job): number => (state === 'waiting' ? (places.get(id) ?? -1) : -1);
  return [...jobs].sort((a, b) => stage(a) - stage(b) || place(a) - place(b));
}
