import { FolderOpen } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import type { Job } from '../../electron/contract/jobs.ts';
import { JobRow } from '../shared/JobRow.tsx';
import { handoverState } from '../state/handoverState.ts';
import { isOpenJob, jobsState } from '../state/jobsState.ts';
import { showInFolder } from './showInFolder.ts';

/** The handovers under way, and those that ended while the window was open: where each lies, and what is missing. */
export function HandoverJobs() {
  const started = handoverState((state) => state.started);
  const jobs = jobsState(
    useShallow((state) =>
      state.jobs.filter((job) => job.kind === 'handover' && (isOpenJob(job) || started.includes(job.id))),
    ),
  );
  if (jobs.length === 0) return null;
  return (
    <section aria-label="Handovers">
      <h2>Handovers</h2>
      <ul className="job-list">
        {[...jobs]
          .reverse()
          .map((job) =>
            job.state === 'done' ? <Delivered key={job.id} job={job} /> : <JobRow key={job.id} job={job} />,
          )}
      </ul>
    </section>
  );
}

function Delivered({ job }: { readonly job: Job }) {
  const { sessionId } = job;
  const delivery = handoverState((state) =>
    sessionId === null ? undefined : state.handed[sessionId]?.deliveries.find(({ jobId }) => jobId === job.id),
  );
  return (
    <li className="job-row" data-testid="delivered" data-job={job.id}>
      <div className="job-words">
        <strong>{job.title}</strong>
        {delivery === undefined ? (
          <span className="soft">handed over</span>
        ) : (
          <span className="soft">
            Version {delivery.version}: {delivery.path}
          </span>
        )}
        {delivery?.failed.map((part) => (
          <span key={`${part.clip}/${part.sentence}`} className="delivery-failed" role="alert">
            <strong>{part.clip}:</strong> {part.sentence}
          </span>
        ))}
      </div>
      {sessionId !== null && delivery !== undefined && (
        <button type="button" className="quiet-button" onClick={() => void showInFolder(sessionId, job.id)}>
          <FolderOpen aria-hidden="true" /> Show
        </button>
      )}
    </li>
  );
}
