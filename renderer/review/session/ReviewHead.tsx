import { ArrowLeft, FileText, History, Keyboard, NotebookPen, Redo2, SkipForward, Undo2 } from 'lucide-react';
import type { HistoryState } from '../../../electron/contract/shapes.ts';
import type { Review } from '../../../engine/review/review.ts';
import { day } from '../../base/figures.ts';
import { redo, undo } from '../../shared/undoRedo.ts';

type ReviewHeadProps = {
  readonly review: Review;
  readonly history: HistoryState;
  readonly onDesk: () => void;
  /** Without it the session's own words stay as they are. */
  readonly onSession?: () => void;
  /** Without it there is no letter: a second look has none. */
  readonly onLetter?: () => void;
  readonly onKeys: () => void;
  readonly onHistory: () => void;
  readonly onNext: () => void;
};

/** Whose session it is, the way back, and the acts that concern it as a whole. */
export function ReviewHead({
  review,
  history,
  onDesk,
  onSession,
  onLetter,
  onKeys,
  onHistory,
  onNext,
}: ReviewHeadProps) {
  const { title, date } = review.session;
  return (
    <header className="screen-head">
      <button type="button" className="quiet-button" onClick={onDesk}>
        <ArrowLeft aria-hidden="true" /> Desk
      </button>
      <h1>{review.trainee.name}</h1>
      <span className="soft head-words">
        {title === '' ? '' : `${title}, `}
        {day(date)}
      </span>
      {onSession !== undefined && (
        <button type="button" className="quiet-button" onClick={onSession}>
          <NotebookPen aria-hidden="true" /> Session notes
        </button>
      )}
      <span className="head-gap" />
      <button
        type="button"
        className="quiet-button"
        disabled={history.undo === null}
        title={history.undo ?? undefined}
        onClick={() => void undo()}
      >
        <Undo2 aria-hidden="true" />{' '}
        <span className="act-name">{history.undo === null ? 'Undo' : `Undo: ${history.undo}`}</span>
      </button>
      <button
        type="button"
        className="quiet-button"
        disabled={history.redo === null}
        title={history.redo ?? undefined}
        onClick={() => void redo()}
      >
        <Redo2 aria-hidden="true" />{' '}
        <span className="act-name">{history.redo === null ? 'Redo' : `Redo: ${history.redo}`}</span>
      </button>
      <button
        type="button"
        className="icon-button"
        aria-label="What was done"
        title="What was done"
        onClick={onHistory}
      >
        <History aria-hidden="true" />
      </button>
      <button
        type="button"
        className="icon-button"
        aria-label="Next session due"
        title="Next session due"
        onClick={onNext}
      >
        <SkipForward aria-hidden="true" />
      </button>
      <button type="button" className="icon-button" aria-label="Keys" title="Keys (?)" onClick={onKeys}>
        <Keyboard aria-hidden="true" />
      </button>
      {onLetter !== undefined && (
        <button type="button" className="primary" onClick={onLetter}>
          <FileText aria-hidden="true" /> Letter
        </button>
      )}
    </header>
  );
}
