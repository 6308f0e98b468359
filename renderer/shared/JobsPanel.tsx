import { Pause, Play, RotateCcw, X } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import { Dialog } from '../base/Dialog.tsx';
import { mutate } from '../bridge/mutate.ts';
import { inLineOrder, isOpenJob, isUnderWay, jobsState } from '../state/jobsState.ts';
import { settingsState } from '../state/settingsState.ts';
import { sayJobs } from '../words/sayJobs.ts';
import { JobRow } from './JobRow.tsx';

/** Everything that runs, waits or failed: what runs first, then the line in its order, which can be changed and paused. */
export function JobsPanel() {
  const open = jobsState(useShallow(({ jobs, line }) => inLineOrder(jobs.filter(isOpenJob), line)));
  const line = jobsState((state) => state.line);
  const paused = settingsState(({ settings }) => settings?.measuringPaused === true);
  const underWay = open.filter(isUnderWay);
  const failed = open.filter((job) => job.state === 'failed');
  const waiting = underWay.filter(({ id, state }) => state === 'waiting' && line.includes(id)).map(({ id }) => id);
  const measures = underWay.some(({ kind }) => kind === 'measure');
  return (
    <>
      {(measures || paused) && <PauseButton paused={paused} />}
      {underWay.length > 0 && (
        <ul className="job-list">
          {underWay.map((job) => (
            <JobRow
              key={job.id}
              job={job}
              {...(waiting.includes(job.id) && { place: waiting.indexOf(job.id), of: waiting.length })}
            />
          ))}
        </ul>
      )}
      {failed.length > 0 && (
        <section className="jobs-failed" aria-label={sayJobs('failedJobs')}>
          {failed.length > 1 && <AllFailed jobIds={failed.map(({ id }) => id)} />}
          <ul className="job-list">
            {failed.map((job) => (
              <JobRow key={job.id} job={job} />
            ))}
          </ul>
        </section>
      )}
      {open.length === 0 && <p className="soft">{sayJobs('none')}</p>}
    </>
  );
}

function PauseButton({ paused }: { readonly paused: boolean }) {
  return (
    <button
      type="button"
      className="quiet-button"
      onClick={() => void mutate('settings.change', { measuringPaused: !paused })}
    >
      {paused ? <Play aria-hidden="true" /> : <Pause aria-hidden="true" />} {sayJobs(paused ? 'goOn' : 'pause')}
    </button>
  );
}

/** What failed, tried again or put out of sight together. */
function AllFailed({ jobIds }: { readonly jobIds: readonly string[] }) {
  const retryAll = async (): Promise<void> => {
    for (const jobId of jobIds) await mutate('jobs.retry', { jobId });
  };
  return (
    <p className="jobs-together">
      <button type="button" className="quiet-button" onClick={() => void retryAll()}>
        <RotateCcw aria-hidden="true" /> {sayJobs('retryAll')}
      </button>
      <button
        type="button"
        className="quiet-button"
        onClick={() => void mutate('jobs.dismiss', { jobIds: [...jobIds] })}
      >
        <X aria-hidden="true" /> {sayJobs('dismissAll')}
      </button>
    </p>
  );
}

/** The same over any screen. */
export function JobsDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title={sayJobs('title')} onClose={onClose} size="wide">
      <JobsPanel />
    </Dialog>
  );
}
