import { ArrowDown, ArrowUp, ArrowUpToLine, RotateCcw, X } from 'lucide-react';
import type { Job, LineMove } from '../../electron/contract/jobs.ts';
import { sayTimeLeft } from '../../engine/wording/sayTimeLeft.ts';
import { mutate } from '../bridge/mutate.ts';
import { isUnderWay } from '../state/jobsState.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayJob } from '../words/sayJob.ts';
import { sayJobs } from '../words/sayJobs.ts';

type JobRowProps = {
  readonly job: Job;
  /** Where it waits in a line that can be ordered, from 0, and how many wait there. */
  readonly place?: number;
  readonly of?: number;
};

/** One job: what it does, how far it is and how long it still takes, and what can be done with it. */
export function JobRow({ job, place, of = 0 }: JobRowProps) {
  const language = deskLanguage((state) => state.language);
  const active = isUnderWay(job);
  const title = sayJob(job.title);
  return (
    <li className="job-row" data-testid="job" data-state={job.state} data-job={job.id}>
      <div className="job-words">
        <strong>{title}</strong>
        <span className="soft">
          {job.message === null ? sayJobs(job.state === 'running' ? 'runningState' : job.state) : sayJob(job.message)}
          {job.secondsLeft !== null && ` · ${sayTimeLeft(job.secondsLeft, language)}`}
        </span>
      </div>
      {place !== undefined && (
        <span className="job-moves">
          <MoveButton job={job} to="first" isLast={place === 0} />
          <MoveButton job={job} to="up" isLast={place === 0} />
          <MoveButton job={job} to="down" isLast={place === of - 1} />
        </span>
      )}
      {active && (
        <button
          type="button"
          className="quiet-button"
          aria-label={sayJobs('cancelOf', { job: title })}
          onClick={() => void mutate('jobs.cancel', { jobId: job.id })}
        >
          <X aria-hidden="true" /> {sayJobs('cancel')}
        </button>
      )}
      {(job.state === 'failed' || job.state === 'cancelled') && (
        <button
          type="button"
          className="quiet-button"
          aria-label={sayJobs('tryAgainOf', { job: title })}
          onClick={() => void mutate('jobs.retry', { jobId: job.id })}
        >
          <RotateCcw aria-hidden="true" /> {sayJobs('tryAgain')}
        </button>
      )}
      {job.state === 'failed' && (
        <button
          type="button"
          className="icon-button"
          aria-label={sayJobs('dismissOf', { job: title })}
          title={sayJobs('dismissOf', { job: title })}
          onClick={() => void mutate('jobs.dismiss', { jobIds: [job.id] })}
        >
          <X aria-hidden="true" />
        </button>
      )}
      {active && (job.state === 'running' || place === undefined) && (
        <progress
          aria-label={sayJobs('progress', { job: title })}
          max={1}
          {...(job.progress === null ? {} : { value: job.progress })}
        />
      )}
    </li>
  );
}

const moves = {
  first: { Icon: ArrowUpToLine, words: 'moveFirst' },
  up: { Icon: ArrowUp, words: 'moveUp' },
  down: { Icon: ArrowDown, words: 'moveDown' },
} as const;

/** Puts a job elsewhere in its line; at the line's end the button stays and does nothing, so that the focus stays too. */
function MoveButton({ job, to, isLast }: { readonly job: Job; readonly to: LineMove; readonly isLast: boolean }) {
  const { Icon, words } = moves[to];
  const label = sayJobs(words, { job: sayJob(job.title) });
  return (
    <button
      type="button"
      className="icon-button"
      aria-label={label}
      title={label}
      aria-disabled={isLast ? true : undefined}
      onClick={() => {
        if (!isLast) void mutate('jobs.move', { jobId: job.id, to });
      }}
    >
      <Icon aria-hidden="true" />
    </button>
  );
}
