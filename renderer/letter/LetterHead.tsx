import { ArrowLeft, CalendarClock, PackageCheck, Pencil } from 'lucide-react';
import type { RefObject } from 'react';
import type { DocumentKind } from '../../electron/contract/documents.ts';
import { day } from '../base/figures.ts';
import { CommandButton } from '../commands/CommandButton.tsx';
import { availabilityOf, runCommand } from '../commands/command.ts';
import { nextToDo } from '../commands/nightCommands.ts';
import { handOver } from '../commands/sessionCommands.ts';
import type { ReviewData } from '../state/reviewState.ts';
import { screenState } from '../state/screenState.ts';
import { sayLetter } from '../words/sayLetter.ts';
import type { LetterContext } from './letterContext.ts';
import { documentOf, type LetterView, showView } from './letterDesk.ts';
import { editLetter } from './paragraphCommands.ts';
import { SaveDocument } from './SaveDocument.tsx';

const offered = ['letter', 'sheet', 'breakdown', 'filmingCard'] as const;
type LetterHeadProps = {
  readonly context: LetterContext;
  readonly data: ReviewData;
  readonly view: LetterView;
  /** Set to what saves the document shown. */
  readonly save: RefObject<() => Promise<void>>;
};

/** Whose letter it is, which document is shown, and what can be done with it. */
export function LetterHead({ context, data, view, save }: LetterHeadProps) {
  const { sessionId } = context;
  const { review, readOnly, names } = data;
  const document = documentOf(view);
  const preview = (kind: DocumentKind): void => showView({ kind: 'preview', document: kind });
  return (
    <header className="screen-head">
      <button
        type="button"
        className="quiet-button"
        onClick={() => screenState.getState().go({ kind: 'review', sessionId })}
      >
        <ArrowLeft aria-hidden="true" /> {sayLetter('review')}
      </button>
      <h1>{review.trainee.name}</h1>
      <span className="soft head-words">{day(review.session.date)}</span>
      <span className="head-gap" />
      <fieldset className="switch" aria-label={sayLetter('document')}>
        {offered.map((kind) => (
          <button
            key={kind}
            type="button"
            aria-pressed={document === kind || (kind === 'sheet' && document === 'shortSheet')}
            onClick={() => preview(kind)}
          >
            {sayLetter(kind)}
          </button>
        ))}
      </fieldset>
      {document === 'letter' && view.kind !== 'sent' && !readOnly && (
        <button type="button" aria-pressed={view.kind === 'editing'} onClick={() => runCommand(editLetter, context)}>
          <Pencil aria-hidden="true" /> {sayLetter('edit')}
        </button>
      )}
      {(document === 'sheet' || document === 'shortSheet') && (
        <label className="field-inline">
          <span className="visually-hidden">{sayLetter('sheetLength')}</span>
          <select
            value={document}
            onChange={(event) => preview(event.target.value === 'sheet' ? 'sheet' : 'shortSheet')}
          >
            <option value="sheet">{sayLetter('full')}</option>
            <option value="shortSheet">{sayLetter('short')}</option>
          </select>
        </label>
      )}
      <SaveDocument
        sessionId={sessionId}
        document={document}
        review={review}
        names={names}
        sent={view.kind === 'sent' ? view.version : null}
        run={save}
      />
      <CommandButton
        command={nextToDo}
        availability={availabilityOf(nextToDo, context)}
        onRun={() => runCommand(nextToDo, context)}
        className="icon-button"
        shows="icon"
      >
        <CalendarClock aria-hidden="true" />
      </CommandButton>
      {!readOnly && (
        <CommandButton
          command={handOver}
          availability={availabilityOf(handOver, context)}
          onRun={() => runCommand(handOver, context)}
          className="primary"
          shows="words"
        >
          <PackageCheck aria-hidden="true" />
        </CommandButton>
      )}
    </header>
  );
}
