import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { sayDrawings } from '../../words/sayDrawings.ts';
import { addDrawn, chooseTool, leaveDrawing, saveWords, stepBackInDrawing } from '../commands/drawing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { drawingState, type Writing } from '../state/pictureTools.ts';
import { DrawingList } from './DrawingList.tsx';
import { tools, usualShape } from './shapes.ts';

type DrawBarProps = { readonly clip: Clip; readonly media: ClipMedia; readonly table: FrameTable };

/** The tools, the words of a text, and the clip's drawings; shown while the picture is drawn on. */
export function DrawBar({ clip, media, table }: DrawBarProps) {
  const context = useReview();
  const { drawing, tool, writing, focusNext } = drawingState();
  const chosen = useRef<HTMLInputElement>(null);
  const group = useId();
  useEffect(() => {
    if (drawing === 'off' || focusNext !== 'tools') return;
    chosen.current?.focus();
    drawingState.setState({ focusNext: null });
  }, [drawing, focusNext]);
  if (drawing === 'off') return null;

  const place = (): void => {
    if (tool === 'select') return;
    const middle = { x: Math.round(media.width / 2), y: Math.round(media.height / 2) };
    if (tool === 'text') drawingState.setState({ writing: { drawingId: null, at: middle, words: '' } });
    else void addDrawn(context, usualShape(tool, media));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') place();
    else if (event.key === 'Escape') stepBackInDrawing(context);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <section aria-label={sayDrawings('drawing')}>
      <div className="draw-bar">
        <fieldset className="draw-tools" aria-label={sayDrawings('tools')} onKeyDown={onKeyDown}>
          {tools.map((one) => (
            <label key={one}>
              <input
                ref={one === tool ? chosen : null}
                type="radio"
                name={group}
                value={one}
                checked={one === tool}
                onChange={() => chooseTool(one)}
              />
              {sayDrawings(one)}
            </label>
          ))}
        </fieldset>
        <button type="button" onClick={() => leaveDrawing(context)}>
          {sayDrawings('done')}
        </button>
        {writing === null ? (
          <p className="soft">{sayDrawings(`${tool}Hint`)}</p>
        ) : (
          <WordsField key={writing.drawingId} writing={writing} />
        )}
      </div>
      <DrawingList clip={clip} table={table} />
    </section>
  );
}

/** The words of a text on the picture: Enter saves, Escape lets them go. */
function WordsField({ writing }: { readonly writing: Writing }) {
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
        <span>{sayDrawings('textOnPicture')}</span>
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
      <button type="submit">{sayDrawings('saveText')}</button>
    </form>
  );
}
