import { RotateCcw, X } from 'lucide-react';
import type { Job } from '../../electron/contract/jobs.ts';
import { sayTimeLeft } from '../../engine/wording/sayTimeLeft.ts';
import { mutate } from '../bridge/mutate.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayJob } from '../words/sayJob.ts';
import { sayJobs } from '../words/sayJobs.ts';

/** One job: what it does, how far it is and how long it still takes, and buttons to cancel it or to try again. */
export function JobRow({ job }: { readonly job: Job }) {
  const language = deskLanguage((state) => state.language);
  const active = job.state === 'waiting' || job.state === 'running';
  return (
    <li className="job-row" data-testid="job" data-state={job.state}>
      <div className="job-words">
        <strong>{sayJob(job.title)}</strong>
        <span className="soft">
          {job.message === null ? sayJobs(job.state === 'running' ? 'runningState' : job.state) : sayJob(job.message)}
          {job.secondsLeft !== null && ` · ${sayTimeLeft(job.secondsLeft, language)}`}
        </span>
      </div>
      {active && (
        <progress
          aria-label={sayJobs('progress', { job: sayJob(job.title) })}
          max={1}
          {...(job.progress === null ? {} : { value: job.progress })}
        />
      )}
      {active && (
        <button type="button" className="quiet-button" onClick={() => void mutate('jobs.cancel', { jobId: job.id })}>
          <X aria-hidden="true" /> {sayJobs('cancel')}
        </button>
      )}
      {(job.state === 'failed' || job.state === 'cancelled') && (
        <button type="button" className="quiet-button" onClick={() => void mutate('jobs.retry', { jobId: job.id })}>
          <RotateCcw aria-hidden="true" /> {sayJobs('tryAgain')}
        </button>
      )}
    </li>
  );
}
