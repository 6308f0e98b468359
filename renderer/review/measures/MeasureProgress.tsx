import { useShallow } from 'zustand/react/shallow';
import type { Job } from '../../../electron/contract/jobs.ts';
import { JobRow } from '../../shared/JobRow.tsx';
import { jobsState } from '../../state/jobsState.ts';

/** The newest job that measures a clip, unless it is done. */
export const openMeasuring = (jobs: readonly Job[], clipId: string): Job | null => {
  const newest = jobs.findLast((job) => job.kind === 'measure' && job.clipId === clipId);
  return newest === undefined || newest.state === 'done' ? null : newest;
};

export const isUnderWay = (job: Job | null): job is Job =>
  job !== null && (job.state === 'waiting' || job.state === 'running');

/** How far measuring a clip has got, and the way to call it off or try again. */
export function MeasureProgress({ clipId }: { readonly clipId: string }) {
  const job = jobsState(useShallow(({ jobs }) => openMeasuring(jobs, clipId)));
  return job === null ? null : (
    <ul className="job-list">
      <JobRow job={job} />
    </ul>
  );
}
