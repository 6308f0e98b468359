import { Lock, Pencil, Undo2 } from 'lucide-react';
import { useEffect, useState } from 'react';
import { mutate } from '../bridge/mutate.ts';
import { saveLetterDrafts, typeLetterDraft, useLetterDraft } from '../drafts/drafts.ts';
import type { Letter } from '../state/letterState.ts';
import { sayLetter } from '../words/sayLetter.ts';

type Line = Letter['paragraphs'][number];
/** `left`: it was edited just now, and the keys go on from there. */
type Mode = 'editing' | 'reading' | 'left';

/** The letter paragraph by paragraph, each to be put in other words; headings, grades and cautions stay. */
export function EditLetter({ sessionId, letter }: { readonly sessionId: string; readonly letter: Letter }) {
  const [open, setOpen] = useState<string | null>(null);
  const [left, setLeft] = useState<string | null>(null);
  const modeOf = (paragraph: string): Mode => {
    if (open === paragraph) return 'editing';
    return left === paragraph ? 'left' : 'reading';
  };
  return (
    <section className="edit-letter" aria-label={sayLetter('paragraphs')}>
      {letter.paragraphs.map((line) => {
        if (line.kind === 'heading') return <h3 key={line.id}>{line.words}</h3>;
        if (line.kind === 'fixed') return <FixedParagraph key={line.id} words={line.words} />;
        return (
          <EditableParagraph
            key={line.id}
            sessionId={sessionId}
            line={line}
            mode={modeOf(line.id)}
            onOpen={() => setOpen(line.id)}
            onClose={() => {
              setOpen(null);
              setLeft(line.id);
            }}
          />
        );
      })}
      {letter.waiting.length > 0 && (
        <>
          <h3>{sayLetter('waiting')}</h3>
          <p className="soft">{sayLetter('waitingWords')}</p>
          {letter.waiting.map((edit) => (
            <p key={edit.id} className="edit-line">
              <span>{edit.words}</span>
              <Revert sessionId={sessionId} paragraph={edit.id} />
            </p>
          ))}
        </>
      )}
    </section>
  );
}

/** A caution or the closing line: it goes with the letter as it is. */
function FixedParagraph({ words }: { readonly words: string }) {
  return (
    <p className="edit-line soft">
      <Lock role="img" aria-label={sayLetter('fixed')} />
      <span>{words}</span>
    </p>
  );
}

type EditableParagraphProps = {
  readonly sessionId: string;
  readonly line: Line;
  readonly mode: Mode;
  readonly onOpen: () => void;
  readonly onClose: () => void;
};

function EditableParagraph({ sessionId, line, mode, onOpen, onClose }: EditableParagraphProps) {
  if (mode === 'editing') return <ParagraphForm sessionId={sessionId} line={line} onClose={onClose} />;
  return (
    <div className="edit-paragraph" data-edited={line.edited} data-paragraph={line.id}>
      <p className="edit-line">
        <span>
          {line.label !== '' && <strong>{line.label} </strong>}
          {line.words}
        </span>
        <button
          type="button"
          className="quiet-button"
          aria-label={sayLetter('editParagraphOf', { words: line.words.slice(0, 60) })}
          // biome-ignore lint/a11y/noAutofocus: the paragraph was just closed, and the focus was in it
          autoFocus={mode === 'left'}
          onClick={onOpen}
        >
          <Pencil aria-hidden="true" /> {sayLetter('editParagraph')}
        </button>
        {line.edited && <Revert sessionId={sessionId} paragraph={line.id} />}
      </p>
      {line.stale && <StaleNote own={line.own} />}
    </div>
  );
}

/** The words of a paragraph, saved as they are typed. Empty, the paragraph keeps what it said. */
function ParagraphForm({ sessionId, line, onClose }: Pick<EditableParagraphProps, 'sessionId' | 'line' | 'onClose'>) {
  const draft = useLetterDraft(sessionId, line.id);
  useEffect(() => () => void saveLetterDrafts(), []);
  return (
    <form
      className="edit-form"
      onSubmit={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      {line.label !== '' && <strong>{line.label}</strong>}
      <textarea
        // biome-ignore lint/a11y/noAutofocus: the person has just asked to edit this paragraph
        autoFocus
        aria-label={sayLetter('inOwnWords')}
        rows={4}
        maxLength={4000}
        value={draft ?? line.words}
        onChange={(event) => typeLetterDraft(sessionId, line.id, event.target.value)}
        onBlur={() => void saveLetterDrafts()}
        onKeyDown={(event) => {
          if (event.key === 'Escape' || (event.key === 'Enter' && (event.ctrlKey || event.metaKey))) onClose();
        }}
      />
      {line.stale && <StaleNote own={line.own} />}
      <span className="edit-buttons">
        <button type="submit" className="primary">
          {sayLetter('done')}
        </button>
      </span>
    </form>
  );
}

function StaleNote({ own }: { readonly own: string }) {
  return (
    <p className="edit-stale" role="note">
      <strong>{sayLetter('stale')}</strong> {sayLetter('staleWords', { words: own })}
    </p>
  );
}

function Revert({ sessionId, paragraph }: { readonly sessionId: string; readonly paragraph: string }) {
  return (
    <button
      type="button"
      className="quiet-button"
      onClick={() => void mutate('letters.edit', { sessionId, paragraph, words: null })}
    >
      <Undo2 aria-hidden="true" /> {sayLetter('revert')}
    </button>
  );
}
