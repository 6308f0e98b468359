import { Lock, Undo2 } from 'lucide-react';
import { type KeyboardEvent, useEffect, useRef } from 'react';
import { mutate } from '../bridge/mutate.ts';
import type { Letter } from '../state/letterState.ts';
import { sayLetter } from '../words/sayLetter.ts';
import { EditableParagraph } from './EditableParagraph.tsx';
import { letterDesk } from './letterDesk.ts';
import { ParagraphForm } from './ParagraphForm.tsx';
import type { Line } from './paragraphMoves.ts';
import { useParagraphDrag } from './useParagraphDrag.ts';

const buttonsIn = (list: HTMLElement | null): readonly HTMLElement[] => [
  ...(list?.querySelectorAll<HTMLElement>('.edit-open') ?? []),
];

/** The letter line by line: its paragraphs to be put in other words, moved and left out; headings, grades and cautions stay. */
export function EditLetter({ sessionId, letter }: { readonly sessionId: string; readonly letter: Letter }) {
  const { paragraphs, leftOut, waiting } = letter;
  const list = useRef<HTMLElement>(null);
  const { open, at, focus } = letterDesk();
  const drag = useParagraphDrag(sessionId);
  const hand = paragraphs.some(({ id }) => id === at) ? at : paragraphs.find(({ kind }) => kind === 'paragraph')?.id;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a line can have moved with each new letter
  useEffect(() => {
    if (focus === null || open !== null) return;
    const button = list.current?.querySelector<HTMLElement>(`[data-paragraph="${focus}"] .edit-open`);
    if (button === null || button === undefined) return;
    button.focus();
    letterDesk.setState({ focus: null });
  }, [focus, open, letter]);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.shiftKey || event.ctrlKey || event.metaKey || event.altKey) return;
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    const buttons = buttonsIn(list.current);
    const from = buttons.findIndex((button) => button.matches(':focus'));
    if (step === undefined || from === -1) return;
    buttons[from + step]?.focus();
    event.preventDefault();
  };
  return (
    <section className="edit-letter" aria-label={sayLetter('paragraphs')} ref={list} onKeyDown={onKeyDown}>
      {paragraphs.map((line) => {
        if (line.kind === 'heading') return <h2 key={line.id}>{line.words}</h2>;
        if (line.kind === 'fixed') return <FixedLine key={line.id} words={line.words} />;
        if (open === line.id) return <ParagraphForm key={line.id} letter={letter} sessionId={sessionId} line={line} />;
        return (
          <EditableParagraph
            key={line.id}
            sessionId={sessionId}
            lines={paragraphs}
            line={line}
            hand={hand === line.id ? 'atHand' : 'other'}
            drag={drag}
          />
        );
      })}
      {leftOut.length > 0 && (
        <section className="edit-left-out" aria-label={sayLetter('leftOut')}>
          <h2>{sayLetter('leftOut')}</h2>
          <p className="soft">{sayLetter('leftOutWords')}</p>
          {leftOut.map((line) => (
            <LeftOut key={line.id} sessionId={sessionId} line={line} />
          ))}
        </section>
      )}
      {waiting.length > 0 && (
        <>
          <h2>{sayLetter('waiting')}</h2>
          <p className="soft">{sayLetter('waitingWords')}</p>
          {waiting.map((edit) => (
            <p key={edit.id} className="edit-line">
              <span className="edit-words">{edit.words}</span>
              <button
                type="button"
                className="quiet-button"
                onClick={() => void mutate('letters.edit', { sessionId, paragraph: edit.id, words: null })}
              >
                <Undo2 aria-hidden="true" /> {sayLetter('revert')}
              </button>
            </p>
          ))}
        </>
      )}
    </section>
  );
}

/** A caution, a table or the closing line: it goes with the letter as it is. */
function FixedLine({ words }: { readonly words: string }) {
  return (
    <p className="edit-line soft">
      <Lock role="img" aria-label={sayLetter('fixed')} />
      <span className="edit-words">{words}</span>
    </p>
  );
}

function LeftOut({ sessionId, line }: { readonly sessionId: string; readonly line: Line }) {
  const { id, label, words, writer } = line;
  const short = words.slice(0, 60);
  return (
    <p className="edit-line">
      <span className="edit-words soft">
        {label !== '' && <strong>{label} </strong>}
        {words}
      </span>
      {writer === 'coach' && (
        <button
          type="button"
          className="quiet-button"
          aria-label={sayLetter('removeOwnOf', { words: short })}
          onClick={() => void mutate('letters.remove', { sessionId, paragraph: id })}
        >
          {sayLetter('removeOwn')}
        </button>
      )}
      <button
        type="button"
        className="quiet-button"
        aria-label={sayLetter('bringBackOf', { words: short })}
        onClick={() => {
          letterDesk.setState({ focus: id, at: id });
          void mutate('letters.bringBack', { sessionId, paragraph: id });
        }}
      >
        <Undo2 aria-hidden="true" /> {sayLetter('bringBack')}
      </button>
    </p>
  );
}
