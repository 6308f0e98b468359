import { Check, LoaderCircle, TriangleAlert, Undo2, X } from 'lucide-react';
import type { ReactNode } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { sayTimeLeft } from '../../engine/wording/sayTimeLeft.ts';
import { statusState } from '../bridge/statusState.ts';
import { isOpenJob, jobsState } from '../state/jobsState.ts';
import { settingsState } from '../state/settingsState.ts';
import { spokenState } from '../state/spokenState.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayJobs } from '../words/sayJobs.ts';

const savedId = { saving: 'saving', saved: 'saved', failed: 'notSaved' } as const;

type StatusLineProps = {
  readonly onJobs: () => void;
  /** Stands in the line while nothing else is to be said. */
  readonly children?: ReactNode;
};

/** At the foot of every screen: whether all is saved, what is running, and the last thing that went wrong. */
export function StatusLine({ onJobs, children }: StatusLineProps) {
  const { saving, notice, done, held, offer } = statusState(
    useShallow(({ saving, notice, done, held, offer }) => ({ saving, notice, done, held, offer })),
  );
  const paused = settingsState(({ settings }) => settings?.measuringPaused === true);
  const language = deskLanguage((state) => state.language);
  const open = jobsState(useShallow(({ jobs }) => jobs.filter(isOpenJob)));
  const running = open.filter((job) => job.state !== 'failed');
  const failed = open.length - running.length;
  const left = Math.max(...open.map(({ lineSecondsLeft }) => lineSecondsLeft ?? 0));
  return (
    <footer className="status-line">
      <span className="status-saved" role="status" aria-label={sayJobs('savedState')} data-testid="saved-state">
        {saving === 'saved' && <Check aria-hidden="true" />}
        {saving === 'idle' ? '' : sayJobs(savedId[saving])}
      </span>
      <span className="status-done" role="status" aria-label={sayJobs('doneState')} data-testid="done-state">
        {held === '' ? done : held}
        {held === '' && offer !== null && (
          <button type="button" onClick={offer.run}>
            <Undo2 aria-hidden="true" /> {offer.doing}
          </button>
        )}
      </span>
      <Spoken />
      <span className="status-notice" role="alert">
        {notice !== '' && (
          <>
            <TriangleAlert aria-hidden="true" />
            <span>{notice}</span>
            <button
              type="button"
              className="icon-button"
              aria-label={sayJobs('dismiss')}
              onClick={() => statusState.getState().dismiss()}
            >
              <X aria-hidden="true" />
            </button>
          </>
        )}
      </span>
      {notice === '' && children}
      {open.length > 0 && (
        <button type="button" className="status-jobs quiet-button" onClick={onJobs}>
          {running.length > 0 && !paused && <LoaderCircle className="turning" aria-hidden="true" />}
          {running.length > 0 && (paused ? `${sayJobs('paused')}, ` : '')}
          {running.length > 0 && sayJobs('running', { count: running.length })}
          {left > 0 && `, ${sayTimeLeft(left, language)}`}
          {running.length > 0 && failed > 0 && ', '}
          {failed > 0 && sayJobs('failedCount', { count: failed })}
        </button>
      )}
    </footer>
  );
}

/** What changes on screen without a word, in words for a screen reader. */
function Spoken() {
  const spoken = spokenState((state) => state.spoken);
  return (
    <span className="visually-hidden" aria-live="polite" data-testid="spoken">
      {spoken}
    </span>
  );
}
