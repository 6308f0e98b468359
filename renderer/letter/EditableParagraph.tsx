import { ArrowDown, ArrowUp, EyeOff, GripVertical, Pencil, Plus, Undo2 } from 'lucide-react';
import type { ReactNode } from 'react';
import { mutate } from '../bridge/mutate.ts';
import { sayLetter } from '../words/sayLetter.ts';
import { letterDesk } from './letterDesk.ts';
import { addBelow, leaveOut, move } from './paragraphActs.ts';
import { type Line, placeBeyond } from './paragraphMoves.ts';
import type { ParagraphDrag } from './useParagraphDrag.ts';

type EditableParagraphProps = {
  readonly sessionId: string;
  readonly lines: readonly Line[];
  readonly line: Line;
  /** The tools of the paragraph at hand alone are reached by Tab; keys do the same from each. */
  readonly hand: 'atHand' | 'other';
  readonly drag: ParagraphDrag;
};

/** A paragraph as the letter says it, and what can be done with it. */
export function EditableParagraph({ sessionId, lines, line, hand, drag }: EditableParagraphProps) {
  const { id, label, words, writer, edited, stale, own } = line;
  const short = { words: (words === '' ? sayLetter('nothingYet') : words).slice(0, 60) };
  const tabIndex = hand === 'atHand' ? 0 : -1;
  const [up, down] = [placeBeyond(lines, id, 'up'), placeBeyond(lines, id, 'down')];
  const tool = (name: string, icon: ReactNode, run: (() => Promise<void>) | null) => (
    <button
      type="button"
      className="icon-button"
      tabIndex={tabIndex}
      aria-label={name}
      title={name}
      disabled={run === null}
      onClick={() => void run?.()}
    >
      {icon}
    </button>
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: what is done here by pointer is done by keys from its buttons
    <div
      className="edit-paragraph"
      data-edited={edited || writer === 'coach'}
      data-paragraph={id}
      data-drop={drag.over === id}
      onFocus={() => letterDesk.setState({ at: id })}
      {...drag.target(id)}
    >
      <p className="edit-line">
        <span className="edit-grip" title={sayLetter('dragOf', short)} {...drag.source(id)}>
          <GripVertical aria-hidden="true" />
        </span>
        <span className="edit-words">
          {writer === 'coach' && <span className="visually-hidden">{sayLetter('ownParagraph')}: </span>}
          {label !== '' && <strong>{label} </strong>}
          {words === '' ? <span className="soft">{sayLetter('nothingYet')}</span> : words}
        </span>
        <span className="edit-tools">
          {tool(sayLetter('moveUpOf', short), <ArrowUp aria-hidden="true" />, up && (() => move(sessionId, id, up)))}
          {tool(
            sayLetter('moveDownOf', short),
            <ArrowDown aria-hidden="true" />,
            down && (() => move(sessionId, id, down)),
          )}
          {tool(sayLetter('addBelowOf', short), <Plus aria-hidden="true" />, () => addBelow(sessionId, id))}
          {tool(sayLetter('leaveOutOf', short), <EyeOff aria-hidden="true" />, () => leaveOut(sessionId, id))}
        </span>
        <button
          type="button"
          className="quiet-button edit-open"
          aria-label={sayLetter('editParagraphOf', short)}
          onClick={() => letterDesk.setState({ open: id, at: id })}
        >
          <Pencil aria-hidden="true" /> {sayLetter('editParagraph')}
        </button>
        {edited && (
          <button
            type="button"
            className="quiet-button"
            onClick={() => void mutate('letters.edit', { sessionId, paragraph: id, words: null })}
          >
            <Undo2 aria-hidden="true" /> {sayLetter('revert')}
          </button>
        )}
      </p>
      {stale && <StaleNote own={own} writer={writer} />}
    </div>
  );
}

/** Says that what a paragraph rests on has changed, and what the letter would say by itself. */
export function StaleNote({ own, writer }: Pick<Line, 'own' | 'writer'>) {
  if (writer === 'coach') {
    return (
      <p className="edit-stale" role="note">
        <strong>{sayLetter('staleOwn')}</strong>
      </p>
    );
  }
  return (
    <p className="edit-stale" role="note">
      <strong>{sayLetter('stale')}</strong> {sayLetter('staleWords', { words: own })}
    </p>
  );
}
