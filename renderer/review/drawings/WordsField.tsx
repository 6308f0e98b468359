import { useEffect, useRef, useState } from 'react';
import { saveWords } from '../commands/drawing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { drawingState, type Writing } from '../state/drawingState.ts';

/** The words of a text on the picture: Enter saves, Escape lets them go. */
export function WordsField({ writing }: { readonly writing: Writing }) {
  const context = useReview();
  const [words, setWords] = useState(writing.words);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  return (
    <form
      className="field-inline"
      onSubmit={(event) => {
        event.preventDefault();
        void saveWords(context, words);
      }}
    >
      <label className="field-inline">
        <span>Words on the picture</span>
        <input
          ref={field}
          type="text"
          maxLength={200}
          value={words}
          onChange={(event) => setWords(event.target.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Escape') return;
            event.stopPropagation();
            drawingState.setState({ writing: null, focusNext: 'tools' });
          }}
        />
      </label>
      <button type="submit">Save words</button>
    </form>
  );
}
