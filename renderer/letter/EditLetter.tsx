import { Pencil, Undo2 } from 'lucide-react';
import { useState } from 'react';
import { act } from '../bridge/act.ts';
import type { Letter } from './letterState.ts';

type Line = Letter['paragraphs'][number];

/** The letter paragraph by paragraph, each to be put in other words; headings, grades and cautions stay. */
export function EditLetter({ sessionId, letter }: { readonly sessionId: string; readonly letter: Letter }) {
  const [open, setOpen] = useState<string | null>(null);
  return (
    <section className="edit-letter" aria-label="Paragraphs of the letter">
      {letter.paragraphs.map((line) =>
        line.kind === 'heading' ? (
          <h3 key={line.id}>{line.words}</h3>
        ) : (
          <EditableParagraph
            key={line.id}
            sessionId={sessionId}
            line={line}
            mode={open === line.id ? 'editing' : 'reading'}
            onOpen={() => setOpen(line.id)}
            onClose={() => setOpen(null)}
          />
        ),
      )}
      {letter.waiting.length > 0 && (
        <>
          <h3>Waiting for their paragraph</h3>
          <p className="soft">The letter does not say these now. They come back with what they were written for.</p>
          {letter.waiting.map((edit) => (
            <p key={edit.id} className="edit-line">
              <span>{edit.words}</span>
              <TakeBack sessionId={sessionId} paragraph={edit.id} />
            </p>
          ))}
        </>
      )}
    </section>
  );
}

type EditableParagraphProps = {
  readonly sessionId: string;
  readonly line: Line;
  readonly mode: 'editing' | 'reading';
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
        <button type="button" className="quiet-button" aria-label={`Edit: ${line.words.slice(0, 60)}`} onClick={onOpen}>
          <Pencil aria-hidden="true" /> Edit
        </button>
        {line.edited && <TakeBack sessionId={sessionId} paragraph={line.id} />}
      </p>
      {line.stale && (
        <p className="edit-stale" role="note">
          <strong>Changed since you wrote this.</strong> By itself it would say now: “{line.own}”
        </p>
      )}
    </div>
  );
}

function ParagraphForm({ sessionId, line, onClose }: Omit<EditableParagraphProps, 'mode' | 'onOpen'>) {
  const [words, setWords] = useState(line.words);
  const save = async (): Promise<void> => {
    const changed = await act('letters.edit', { sessionId, paragraph: line.id, words });
    if (changed !== null) onClose();
  };
  return (
    <form
      className="edit-form"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <textarea
        // biome-ignore lint/a11y/noAutofocus: the person has just asked to edit this paragraph
        autoFocus
        aria-label="Paragraph in your words"
        rows={4}
        maxLength={4000}
        value={words}
        onChange={(event) => setWords(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Escape') onClose();
          if (event.key === 'Enter' && event.ctrlKey) void save();
        }}
      />
      <span className="edit-buttons">
        <button type="button" onClick={onClose}>
          Cancel
        </button>
        <button type="submit" className="primary" disabled={words.trim() === ''}>
          Save paragraph
        </button>
      </span>
    </form>
  );
}

function TakeBack({ sessionId, paragraph }: { readonly sessionId: string; readonly paragraph: string }) {
  return (
    <button
      type="button"
      className="quiet-button"
      onClick={() => void act('letters.edit', { sessionId, paragraph, words: null })}
    >
      <Undo2 aria-hidden="true" /> Take back
    </button>
  );
}
