import { type KeyboardEvent, useEffect, useLayoutEffect, useRef } from 'react';
import type { Phrase } from '../../electron/contract/settings.ts';
import { fillPhrase } from '../../engine/letter/phrases.ts';
import { chordWords, isChord } from '../commands/keys.ts';
import { saveLetterDrafts, saveLetterWords, typeLetterDraft, useLetterDraft } from '../drafts/drafts.ts';
import type { Letter } from '../state/letterState.ts';
import { settingsState } from '../state/settingsState.ts';
import { sayLetter } from '../words/sayLetter.ts';
import { StaleNote } from './EditableParagraph.tsx';
import { letterDesk } from './letterDesk.ts';
import { close } from './paragraphActs.ts';
import type { Line } from './paragraphMoves.ts';

type ParagraphFormProps = { readonly sessionId: string; readonly letter: Letter; readonly line: Line };

const longestWords = 4000;
const noPhrases: readonly Phrase[] = [];

/** The words of a paragraph, saved as they are typed; own phrases are set in at the cursor. */
export function ParagraphForm({ sessionId, letter, line }: ParagraphFormProps) {
  const draft = useLetterDraft(sessionId, line.id);
  const words = draft ?? line.words;
  const field = useRef<HTMLTextAreaElement>(null);
  const form = useRef<HTMLFormElement>(null);
  const cursor = useRef<number | null>(null);
  const phrases = settingsState((state) => state.settings?.phrases ?? noPhrases);
  useEffect(() => () => void saveLetterDrafts(), []);
  // With its buttons, not only as far as the field that has the focus.
  useEffect(() => form.current?.scrollIntoView?.({ block: 'nearest' }), []);
  useEffect(() => void settingsState.getState().refresh(), []);
  useLayoutEffect(() => {
    if (cursor.current === null) return;
    field.current?.setSelectionRange(cursor.current, cursor.current);
    cursor.current = null;
  });
  const insert = ({ text }: Phrase): void => {
    const area = field.current;
    if (area === null) return;
    const filled = fillPhrase(text, { name: letter.name, exercise: line.exercise });
    const { selectionStart, selectionEnd } = area;
    const next = words.slice(0, selectionStart) + filled + words.slice(selectionEnd);
    if (next.length > longestWords) return;
    cursor.current = selectionStart + filled.length;
    typeLetterDraft(sessionId, line.id, next);
    area.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const phrase = phrases.find(({ key }) => key !== null && isChord(event, `Mod+${key}`));
    if (phrase !== undefined) {
      event.preventDefault();
      insert(phrase);
    } else if (event.key === 'Escape' || isChord(event, 'Mod+Enter')) void close(sessionId, line);
  };
  return (
    <form
      ref={form}
      className="edit-form"
      onSubmit={(event) => {
        event.preventDefault();
        void close(sessionId, line);
      }}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) void saveLetterWords();
      }}
    >
      {line.label !== '' && <strong>{line.label}</strong>}
      <textarea
        ref={field}
        // biome-ignore lint/a11y/noAutofocus: the person has just asked to edit this paragraph
        autoFocus
        aria-label={sayLetter('inOwnWords')}
        aria-describedby="typing-help"
        rows={4}
        maxLength={longestWords}
        value={words}
        onChange={(event) => typeLetterDraft(sessionId, line.id, event.target.value)}
        onKeyDown={onKeyDown}
      />
      {line.stale && <StaleNote own={line.own} writer={line.writer} />}
      <div className="edit-buttons">
        <fieldset className="edit-phrases" aria-label={sayLetter('phrases')}>
          {phrases.map((phrase) => (
            <button
              key={phrase.id}
              type="button"
              className="chip"
              aria-label={sayLetter('phraseInsert', { name: phrase.name })}
              title={phrase.text}
              onClick={() => insert(phrase)}
            >
              {phrase.name}
              {phrase.key !== null && <kbd className="key-hint">{chordWords(`Mod+${phrase.key}`).join(' ')}</kbd>}
            </button>
          ))}
          <button
            type="button"
            className="quiet-button"
            aria-label={sayLetter('phrasesChange')}
            onClick={() => letterDesk.setState({ asking: 'phrases' })}
          >
            {sayLetter('phrases')}…
          </button>
        </fieldset>
        <button type="submit" className="primary">
          {sayLetter('done')}
        </button>
      </div>
      <p className="soft" id="typing-help">
        {sayLetter('typingHelp')}
      </p>
    </form>
  );
}
