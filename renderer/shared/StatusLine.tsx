import { Check, LoaderCircle, TriangleAlert, X } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import { leftInWords } from '../../electron/contract/timeLeft.ts';
import { counted } from '../base/figures.ts';
import { statusState } from '../bridge/statusState.ts';
import { isOpenJob, jobsState } from '../state/jobsState.ts';

const savedWords = { idle: '', saving: 'Saving', saved: 'Saved', failed: 'Not saved' } as const;

/** At the foot of every screen: whether all is saved, what is running, and the last thing that went wrong. */
export function StatusLine({ onJobs }: { readonly onJobs: () => void }) {
  const { saving, notice } = statusState(useShallow(({ saving, notice }) => ({ saving, notice })));
  const open = jobsState(useShallow(({ jobs }) => jobs.filter(isOpenJob)));
  const running = open.filter((job) => job.state !== 'failed');
  const failed = open.length - running.length;
  const left = Math.max(...open.map(({ lineSecondsLeft }) => lineSecondsLeft ?? 0));
  return (
    <footer className="status-line">
      <span className="status-saved" role="status" aria-label="Saving state" data-testid="saved-state">
        {saving === 'saved' && <Check aria-hidden="true" />}
        {savedWords[saving]}
      </span>
      <span className="status-notice" role="alert">
        {notice !== '' && (
          <>
            <TriangleAlert aria-hidden="true" />
            <span>{notice}</span>
            <button
              type="button"
              className="icon-button"
              aria-label="Dismiss the notice"
              onClick={() => statusState.getState().dismiss()}
            >
              <X aria-hidden="true" />
            </button>
          </>
        )}
      </span>
      {open.length > 0 && (
        <button type="button" className="status-jobs quiet-button" onClick={onJobs}>
          {running.length > 0 && <LoaderCircle className="turning" aria-hidden="true" />}
          {running.length > 0 && counted(running.length, 'job')}
          {left > 0 && `, ${leftInWords(left)}`}
          {running.length > 0 && failed > 0 && ', '}
          {failed > 0 && `${failed} failed`}
        </button>
      )}
    </footer>
  );
}
