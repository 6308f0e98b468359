import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { addDrawn, chooseTool, leaveDrawing, saveWords, stepBackInDrawing } from '../commands/drawing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { type DrawTool, drawingState, type Writing } from '../state/pictureTools.ts';
import { DrawingList } from './DrawingList.tsx';
import { toolName, tools, usualShape } from './shapes.ts';

type DrawBarProps = { readonly clip: Clip; readonly media: ClipMedia; readonly table: FrameTable };

const hints: Readonly<Record<DrawTool, string>> = {
  select: 'Click a drawing, or Tab to it; drag or arrows move it, Delete takes it away.',
  line: 'Drag from one end to the other. Enter puts one in the middle.',
  angle: 'Click one arm, the apex, the other arm. Enter puts one in the middle.',
  plumb: 'Drag from top to bottom: it stays vertical. Enter puts one in the middle.',
  circle: 'Drag from the middle to the rim. Enter puts one in the middle.',
  stroke: 'Drag freely. Enter puts one in the middle.',
  text: 'Click where the words begin. Enter puts them in the middle.',
};

/** The tools, the words of a text, and the clip's drawings; shown while the picture is drawn on. */
export function DrawBar({ clip, media, table }: DrawBarProps) {
  const context = useReview();
  const { drawing, tool, writing, focusNext } = drawingState();
  const chosen = useRef<HTMLInputElement>(null);
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
    <section aria-label="Drawing">
      <div className="draw-bar">
        <fieldset className="draw-tools" aria-label="Drawing tool" onKeyDown={onKeyDown}>
          {tools.map((one) => (
            <label key={one}>
              <input
                ref={one === tool ? chosen : null}
                type="radio"
                name="drawing-tool"
                value={one}
                checked={one === tool}
                onChange={() => chooseTool(one)}
              />
              {toolName(one)}
            </label>
          ))}
        </fieldset>
        <button type="button" onClick={() => leaveDrawing(context)}>
          Done
        </button>
        {writing === null ? (
          <p className="soft">{hints[tool]}</p>
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
