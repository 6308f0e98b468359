import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { drawnOf, type Point } from '../../../engine/review/drawings/drawing.ts';
import { moveDrawn } from '../../../engine/review/drawings/geometry.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { MoveButtons } from '../../base/MoveButtons.tsx';
import { sayDrawings } from '../../words/sayDrawings.ts';
import {
  addDrawn,
  chooseTool,
  leaveDrawing,
  saveMovedDrawing,
  saveWords,
  stepBackInDrawing,
} from '../commands/drawing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { asSeen } from '../model/arrows.ts';
import { drawingState, type Writing } from '../state/pictureTools.ts';
import { DrawingList } from './DrawingList.tsx';
import { drawingWords, tools, usualShape } from './shapes.ts';

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
        <MoveDrawing clip={clip} media={media} />
      </div>
      <DrawingList clip={clip} table={table} />
    </section>
  );
}

/** The selected drawing, moved by clicks; its points are set anew by drawing it again. */
function MoveDrawing({ clip, media }: Pick<DrawBarProps, 'clip' | 'media'>) {
  const context = useReview();
  const selectedId = drawingState((state) => state.selectedId);
  const drawings = clip.drawings ?? [];
  const index = drawings.findIndex(({ id }) => id === selectedId);
  const selected = drawings[index];
  if (selected === undefined) return null;
  const move = (by: Point): void => {
    const { open } = drawingState.getState();
    const drawn = open?.drawingId === selected.id ? open.drawn : drawnOf(selected);
    drawingState.setState({ open: { drawingId: selected.id, drawn: moveDrawn(drawn, by) } });
    void saveMovedDrawing(context);
  };
  return (
    <MoveButtons
      part={drawingWords(selected, index)}
      picture={media}
      onMove={(by) => move(asSeen(by, clip.framing?.mirrored === true))}
    />
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
