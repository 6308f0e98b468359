import { RotateCcw, X } from 'lucide-react';
import type { Job } from '../../electron/contract/jobs.ts';
import { leftInWords } from '../../electron/contract/timeLeft.ts';
import { mutate } from '../bridge/mutate.ts';

const stateWords: Readonly<Record<Job['state'], string>> = {
  waiting: 'waiting',
  running: 'running',
  done: 'done',
  failed: 'failed',
  cancelled: 'cancelled',
};

/** One job: what it does, how far it is and how long it still takes, and buttons to cancel it or to try again. */
export function JobRow({ job }: { readonly job: Job }) {
  const active = job.state === 'waiting' || job.state === 'running';
  return (
    <li className="job-row" data-testid="job" data-state={job.state}>
      <div className="job-words">
        <strong>{job.title}</strong>
        <span className="soft">
          {job.message === '' ? stateWords[job.state] : job.message}
          {job.secondsLeft !== null && ` · ${leftInWords(job.secondsLeft)}`}
        </span>
      </div>
      {active && (
        <progress
          aria-label={`Progress: ${job.title}`}
          max={1}
          {...(job.progress === null ? {} : { value: job.progress })}
        />
      )}
      {active && (
        <button type="button" className="quiet-button" onClick={() => void mutate('jobs.cancel', { jobId: job.id })}>
          <X aria-hidden="true" /> Cancel
        </button>
      )}
      {(job.state === 'failed' || job.state === 'cancelled') && (
        <button type="button" className="quiet-button" onClick={() => void mutate('jobs.retry', { jobId: job.id })}>
          <RotateCcw aria-hidden="true" /> Retry
        </button>
      )}
    </li>
  );
}
