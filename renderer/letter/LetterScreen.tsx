import { ArrowLeft, PackageCheck, Pencil } from 'lucide-react';
import { useEffect, useMemo, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { previewAddress, sentAddress } from '../../electron/contract/addresses.ts';
import type { DocumentKind } from '../../electron/contract/documents.ts';
import { day } from '../base/figures.ts';
import { ReceivedNote } from '../base/ReceivedNote.tsx';
import { SessionCautions } from '../base/SessionCautions.tsx';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { letterState, useLetter } from '../state/letterState.ts';
import { reviewState } from '../state/reviewState.ts';
import { goToHandover, screenState } from '../state/screenState.ts';
import { EditLetter } from './EditLetter.tsx';
import { GradeTree } from './GradeTree.tsx';
import { LetterStyleBar } from './LetterStyleBar.tsx';
import { letterCommands, letterContext } from './letterCommands.ts';
import { SaveDocument } from './SaveDocument.tsx';
import { SecondLookButton } from './SecondLookButton.tsx';
import { SecondLookUnderWay } from './SecondLookUnderWay.tsx';
import { SentLetters } from './SentLetters.tsx';
import { useSecondLook } from './useSecondLook.ts';

const documents = ['letter', 'sheet', 'breakdown', 'filmingCard'] as const;
const names: Readonly<Record<DocumentKind, string>> = {
  letter: 'Letter',
  sheet: 'Sheet',
  shortSheet: 'Short sheet',
  breakdown: 'Breakdown',
  filmingCard: 'Filming card',
};

const titleOf = (shows: DocumentKind, sent: number | null): string => {
  if (sent !== null) return `The letter as sent, version ${sent}`;
  return `Preview of the ${names[shows].toLowerCase()}`;
};

/** The letter and the sheet as they will be handed over, beside the grade they rest on. */
export function LetterScreen({ sessionId }: { readonly sessionId: string }) {
  const { data, revision } = reviewState(useShallow(({ data, revision }) => ({ data, revision })));
  const catalogue = catalogueState((state) => state.catalogue);
  const letter = useLetter(sessionId);
  const look = useSecondLook(sessionId);
  const [shows, setShows] = useState<DocumentKind>('letter');
  const [way, setWay] = useState<'looking' | 'editing'>('looking');
  const [sent, setSent] = useState<number | null>(null);
  const [panel, setPanel] = useCommandPanel();
  useEffect(() => {
    // What is read already is kept in step; reading it again would show every document twice.
    const { sessionId: known, data: read, open } = reviewState.getState();
    if (known !== sessionId || read === null) void open(sessionId);
  }, [sessionId]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the letter is old once the session has changed
  useEffect(() => {
    void letterState.getState().refresh(sessionId);
  }, [sessionId, revision]);
  const handsOver =
    data !== null && !data.readOnly && data.grade.state.kind !== 'none' && data.review.session.id === sessionId;
  const context = useMemo(() => letterContext(sessionId), [sessionId]);
  if (data === null || catalogue === null) return <main className="screen-wait">Opening the letter…</main>;
  const { review, grade, readOnly, names: named } = data;
  return (
    <>
      <header className="screen-head">
        <button
          type="button"
          className="quiet-button"
          onClick={() => screenState.getState().go({ kind: 'review', sessionId })}
        >
          <ArrowLeft aria-hidden="true" /> Review
        </button>
        <h1>{review.trainee.name}</h1>
        <span className="soft head-words">{day(review.session.date)}</span>
        <span className="head-gap" />
        <fieldset className="switch" aria-label="Document">
          {documents.map((kind) => (
            <button
              key={kind}
              type="button"
              aria-pressed={shows === kind || (kind === 'sheet' && shows === 'shortSheet')}
              onClick={() => {
                setShows(kind);
                setWay('looking');
                setSent(null);
              }}
            >
              {names[kind]}
            </button>
          ))}
        </fieldset>
        {shows === 'letter' && sent === null && !readOnly && (
          <button
            type="button"
            aria-pressed={way === 'editing'}
            onClick={() => setWay(way === 'editing' ? 'looking' : 'editing')}
          >
            <Pencil aria-hidden="true" /> Edit the letter
          </button>
        )}
        {(shows === 'sheet' || shows === 'shortSheet') && (
          <label className="field-inline">
            <span className="visually-hidden">Length of the sheet</span>
            <select
              value={shows}
              onChange={(event) => setShows(event.target.value === 'sheet' ? 'sheet' : 'shortSheet')}
            >
              <option value="sheet">Full</option>
              <option value="shortSheet">Short</option>
            </select>
          </label>
        )}
        <SaveDocument sessionId={sessionId} document={shows} review={review} names={named} sent={sent} />
        {handsOver && (
          <button type="button" className="primary" onClick={() => goToHandover(sessionId)}>
            <PackageCheck aria-hidden="true" /> Hand over
          </button>
        )}
      </header>
      {readOnly && <ReceivedNote />}
      <main className="letter">
        {way === 'editing' && letter !== null ? (
          <EditLetter sessionId={sessionId} letter={letter} />
        ) : (
          <iframe
            className="document-preview"
            title={titleOf(shows, sent)}
            sandbox=""
            src={sent === null ? previewAddress(sessionId, shows, revision) : sentAddress(sessionId, sent)}
          />
        )}
        <aside className="letter-side" aria-label="Grade tree">
          {look?.state === 'underWay' && <SecondLookUnderWay lookId={look.sessionId} />}
          <SessionCautions review={review} cautions={catalogue.cautions} shown="open" />
          {letter !== null && shows === 'letter' && !readOnly && (
            <>
              <LetterStyleBar sessionId={sessionId} style={letter.style} voice={review.voice} />
              <SentLetters
                sessionId={sessionId}
                letter={letter}
                shown={sent}
                onShow={(version) => {
                  setSent(version);
                  setWay('looking');
                }}
              />
            </>
          )}
          {look?.state !== 'underWay' && !readOnly && (
            <SecondLookButton sessionId={sessionId} finishedId={look?.sessionId ?? null} />
          )}
          <GradeTree review={review} grade={grade} catalogue={catalogue} />
        </aside>
      </main>
      <ScreenCommands
        commands={letterCommands}
        context={context}
        sessionId={sessionId}
        panel={panel}
        onPanel={setPanel}
      />
    </>
  );
}
