import { ArrowLeft, FileText, History, Keyboard, NotebookPen, Redo2, SkipForward, Undo2 } from 'lucide-react';
import type { HistoryState } from '../../../electron/contract/shapes.ts';
import type { Review } from '../../../engine/review/review.ts';
import { day } from '../../base/figures.ts';
import { type CommandPanel, history as historyCommand, keySheet } from '../../commands/everywhereCommands.ts';
import { redo, undo } from '../../commands/historyCommands.ts';
import { letter } from '../../commands/sessionCommands.ts';
import { nextSession } from '../commands/nextSession.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';

type ReviewHeadProps = {
  readonly review: Review;
  readonly history: HistoryState;
  /** A second look has no letter. */
  readonly secondLook: boolean;
  readonly onDesk: () => void;
  /** Without it the session's own words stay as they are. */
  readonly onSession?: () => void;
  readonly onPanel: (panel: CommandPanel) => void;
};

/** Whose session it is, the way back, and the commands that concern it as a whole. */
export function ReviewHead({ review, history, secondLook, onDesk, onSession, onPanel }: ReviewHeadProps) {
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
      <ReviewButton command={undo} className="quiet-button" shows="words" {...named('Undo', history.undo)}>
        <Undo2 aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={redo} className="quiet-button" shows="words" {...named('Redo', history.redo)}>
        <Redo2 aria-hidden="true" />
      </ReviewButton>
      <button
        type="button"
        className="icon-button"
        aria-label={historyCommand.button}
        title={historyCommand.button}
        onClick={() => onPanel('history')}
      >
        <History aria-hidden="true" />
      </button>
      <ReviewButton command={nextSession} className="icon-button" shows="icon">
        <SkipForward aria-hidden="true" />
      </ReviewButton>
      <button
        type="button"
        className="icon-button"
        aria-label={keySheet.button}
        title={`${keySheet.button} (${keySheet.keys[0]})`}
        onClick={() => onPanel('keySheet')}
      >
        <Keyboard aria-hidden="true" />
      </button>
      {!secondLook && (
        <ReviewButton command={letter} className="primary" shows="words">
          <FileText aria-hidden="true" />
        </ReviewButton>
      )}
    </header>
  );
}

/** The words of a button that undoes or redoes the act of a name. */
const named = (verb: string, act: string | null): { readonly words?: string; readonly title?: string } =>
  act === null ? {} : { words: `${verb}: ${act}`, title: act };
