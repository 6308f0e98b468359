import { useEffect, useMemo, useRef } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { previewAddress, sentAddress } from '../../electron/contract/addresses.ts';
import type { Params } from '../../electron/contract/requests.ts';
import { languageNames } from '../../engine/language/language.ts';
import { ReceivedNote } from '../base/ReceivedNote.tsx';
import { SessionCautions } from '../base/SessionCautions.tsx';
import { mutate } from '../bridge/mutate.ts';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { SessionWait } from '../shared/SessionWait.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { type Letter, letterState, useLetter } from '../state/letterState.ts';
import { themeState } from '../state/preferences.ts';
import { reviewState } from '../state/reviewState.ts';
import { sayGradeTree } from '../words/sayGradeTree.ts';
import { sayLetter } from '../words/sayLetter.ts';
import { EditLetter } from './EditLetter.tsx';
import { GradeTree } from './GradeTree.tsx';
import { LetterHead } from './LetterHead.tsx';
import { LetterQuestions } from './LetterQuestions.tsx';
import { letterCommands } from './letterCommands.ts';
import { letterContext } from './letterContext.ts';
import { documentOf, type LetterView, letterDesk, resetLetterDesk, showView } from './letterDesk.ts';
import { SecondLookButton, SecondLookUnderWay, useSecondLook } from './SecondLook.tsx';
import { SentLetters } from './SentLetters.tsx';

/** The documents as they will be handed over, beside the grade they rest on. */
export function LetterScreen({ sessionId }: { readonly sessionId: string }) {
  const { data, revision } = reviewState(useShallow(({ data, revision }) => ({ data, revision })));
  const catalogue = catalogueState((state) => state.catalogue);
  const letter = useLetter(sessionId);
  const look = useSecondLook(sessionId);
  const view = letterDesk((state) => state.view);
  const save = useRef<() => Promise<void>>(async () => {});
  const [panel, setPanel] = useCommandPanel();
  useEffect(() => {
    resetLetterDesk();
    return resetLetterDesk;
  }, []);
  useEffect(() => {
    // What is read already is kept in step; reading it again would show every document twice.
    const { sessionId: known, data: read, open } = reviewState.getState();
    if (known !== sessionId || read === null) void open(sessionId);
  }, [sessionId]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the letter is old once the session has changed
  useEffect(() => {
    void letterState.getState().refresh(sessionId);
  }, [sessionId, revision]);
  const context = useMemo(() => letterContext(sessionId, save), [sessionId]);
  if (data === null || catalogue === null) return <SessionWait words={sayLetter('opening')} />;
  const { review, grade, readOnly } = data;
  const onLetter = letter !== null && documentOf(view) === 'letter' && !readOnly;
  return (
    <>
      <LetterHead context={context} data={data} view={view} save={save} />
      {readOnly && <ReceivedNote />}
      <main className="letter">
        {view.kind === 'editing' && letter !== null ? (
          <EditLetter sessionId={sessionId} letter={letter} />
        ) : (
          <DocumentPreview sessionId={sessionId} view={view} revision={revision} />
        )}
        <aside className="letter-side" aria-label={sayGradeTree('grade')}>
          {look?.state === 'underWay' && <SecondLookUnderWay lookId={look.sessionId} />}
          <SessionCautions review={review} catalogue={catalogue} shown="open" />
          {onLetter && (
            <>
              <LetterStyleBar sessionId={sessionId} style={letter.style} voice={review.voice} />
              <SentLetters
                context={context}
                letter={letter}
                shown={view.kind === 'sent' ? view.version : null}
                onShow={(version) =>
                  showView(version === null ? { kind: 'preview', document: 'letter' } : { kind: 'sent', version })
                }
              />
            </>
          )}
          {look?.state !== 'underWay' && !readOnly && (
            <SecondLookButton sessionId={sessionId} finishedId={look?.sessionId ?? null} />
          )}
          <GradeTree review={review} grade={grade} catalogue={catalogue} />
        </aside>
      </main>
      {letter !== null && <LetterQuestions sessionId={sessionId} letter={letter} />}
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

type DocumentPreviewProps = {
  readonly sessionId: string;
  readonly view: LetterView;
  /** Another number asks for the document anew. */
  readonly revision: number;
};

function DocumentPreview({ sessionId, view, revision }: DocumentPreviewProps) {
  const isSent = view.kind === 'sent';
  const theme = themeState((state) => state.theme);
  const scheme = theme === 'system' ? undefined : theme;
  return (
    <iframe
      className="document-preview"
      title={
        isSent
          ? sayLetter('sentPreview', { version: view.version })
          : sayLetter('preview', { document: sayLetter(documentOf(view)) })
      }
      sandbox=""
      src={
        isSent
          ? sentAddress(sessionId, view.version, scheme)
          : previewAddress(sessionId, documentOf(view), { revision, scheme })
      }
    />
  );
}

type Style = Letter['style'];

const choices: { readonly [K in keyof Style]: Readonly<Record<Style[K], () => string>> } = {
  length: { full: () => sayLetter('full'), short: () => sayLetter('short') },
  tone: { plain: () => sayLetter('plain'), warm: () => sayLetter('warm'), direct: () => sayLetter('direct') },
  language: { en: () => languageNames.en, de: () => languageNames.de },
};

type LetterStyleBarProps = { readonly sessionId: string; readonly style: Style; readonly voice: 'coach' | 'self' };

/** How the letter is written; a self-review has one tone. */
function LetterStyleBar({ sessionId, style, voice }: LetterStyleBarProps) {
  const set = (change: Params<'letters.style'>['style']) => void mutate('letters.style', { sessionId, style: change });
  const shown = (['length', 'tone', 'language'] as const).filter((name) => name !== 'tone' || voice === 'coach');
  return (
    <fieldset className="letter-style" aria-label={sayLetter('style')}>
      {shown.map((name) => (
        <label key={name}>
          {sayLetter(name)}{' '}
          <select value={style[name]} onChange={(event) => set({ [name]: event.target.value })}>
            {Object.entries(choices[name]).map(([value, say]) => (
              <option key={value} value={value}>
                {say()}
              </option>
            ))}
          </select>
        </label>
      ))}
    </fieldset>
  );
}
