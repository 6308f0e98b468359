import { useShallow } from 'zustand/react/shallow';
import { JobRow } from '../../shared/JobRow.tsx';
import { jobsState } from '../../state/jobsState.ts';
import { openMeasuring } from '../commands/measureJobs.ts';

/** How far measuring a clip has got, and the way to call it off or try again. */
export function MeasureProgress({ clipId }: { readonly clipId: string }) {
  const job = jobsState(useShallow(({ jobs }) => openMeasuring(jobs, clipId)));
  return job === null ? null : (
    <ul className="job-list">
      <JobRow job={job} />
    </ul>
  );
}
