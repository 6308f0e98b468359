import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import { type Drawing, type Drawn, drawnOf, showsAt } from '../../../engine/review/drawings/drawing.ts';
import { moveDrawn, movePoint } from '../../../engine/review/drawings/geometry.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { sayDrawings } from '../../words/sayDrawings.ts';
import { leaveDrawing, removeDrawing, saveMovedDrawing, selectDrawing, writeWords } from '../commands/drawing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { arrowSteps, asSeen } from '../model/arrows.ts';
import { drawingState } from '../state/pictureTools.ts';
import { playhead } from '../state/playerState.ts';
import { DrawnShape } from './DrawnShape.tsx';
import { drawingWords, pointName } from './shapes.ts';

type DrawingMarksProps = {
  readonly clip: Clip;
  readonly table: FrameTable;
  /** Picture pixels that one pixel of the screen covers. */
  readonly unit: number;
};

const none: readonly Drawing[] = [];

/** What was drawn and shows at the frame on screen, and the shape that is being drawn. */
export function DrawingMarks({ clip, table, unit }: DrawingMarksProps) {
  const drawing = drawingState((state) => state.drawing);
  const selectedId = drawingState((state) => state.selectedId);
  const fresh = drawingState((state) => (state.open?.drawingId === null ? state.open.drawn : null));
  const drawings = clip.drawings ?? none;
  const shown = useShownDrawings(drawings, table);
  return (
    <>
      {shown.map((one) => (
        <DrawingMark
          key={one.id}
          drawing={one}
          index={drawings.indexOf(one)}
          unit={unit}
          selected={one.id === selectedId}
          open={drawing === 'on'}
        />
      ))}
      {fresh !== null && <DrawnShape drawn={fresh} unit={unit} />}
    </>
  );
}

/** The drawings that show at the frame on screen; renders again only when they change, not with every frame. */
function useShownDrawings(drawings: readonly Drawing[], table: FrameTable): readonly Drawing[] {
  const [frame, setFrame] = useState(() => playhead.getState().frame);
  useEffect(() => {
    const shownAt = (at: number): string =>
      drawings.flatMap((drawing) => (showsAt(drawing, at, table) ? drawing.id : [])).join(' ');
    let shown: string | null = null;
    const look = (): void => {
      const now = playhead.getState().frame;
      const next = shownAt(now);
      if (next === shown) return;
      shown = next;
      setFrame(now);
    };
    look();
    return playhead.subscribe(look);
  }, [drawings, table]);
  return useMemo(() => drawings.filter((drawing) => showsAt(drawing, frame, table)), [drawings, frame, table]);
}

type DrawingMarkProps = {
  readonly drawing: Drawing;
  /** Which of the clip's drawings it is, from 0. */
  readonly index: number;
  readonly unit: number;
  readonly selected: boolean;
  /** Whether it can be worked on now. */
  readonly open: boolean;
};

/** Puts a drawing into another shape on screen; it is saved when the key or the pointer is let go. */
const show = (drawingId: string, drawn: Drawn): void => drawingState.setState({ open: { drawingId, drawn } });

/** One drawing; while the picture is drawn on, it and its points can be reached and moved by keys. */
function DrawingMark({ drawing, index, unit, selected, open }: DrawingMarkProps) {
  const context = useReview();
  const mark = useRef<SVGGElement>(null);
  const points = useRef<(SVGElement | null)[]>([]);
  const moved = drawingState((state) => (state.open?.drawingId === drawing.id ? state.open.drawn : null));
  const drawn = moved ?? drawnOf(drawing);
  const name = drawingWords({ ...drawing, ...drawn }, index);
  const wantsFocus = drawingState((state) => selected && state.focusNext === 'drawing');
  useEffect(() => {
    if (!wantsFocus) return;
    mark.current?.focus({ preventScroll: true });
    drawingState.setState({ focusNext: null });
  }, [wantsFocus]);

  const onKeyDown = (event: KeyboardEvent, point: number | null): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = arrowSteps[event.key];
    if (arrow !== undefined) {
      const step = asSeen(arrow, context.stage?.clip.framing?.mirrored === true);
      const by = event.shiftKey ? { x: step.x * 10, y: step.y * 10 } : step;
      const from = point === null ? undefined : drawn.points[point];
      if (point === null) show(drawing.id, moveDrawn(drawn, by));
      else if (from !== undefined) show(drawing.id, movePoint(drawn, point, { x: from.x + by.x, y: from.y + by.y }));
    } else if (event.key === 'Enter' || event.key === ' ') {
      selectDrawing(drawing.id);
      if (drawing.shape === 'text') writeWords(drawing);
      else if (point === null) points.current[0]?.focus();
    } else if (event.key === 'Delete' || event.key === 'Backspace') void removeDrawing(drawing.id);
    else if (event.key === 'Escape' && point !== null) mark.current?.focus();
    else if (event.key === 'Escape') leaveDrawing(context);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  if (!open) {
    return (
      // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of strokes is one picture to a reader.
      <g role="img" aria-label={name} data-drawing={drawing.id} data-shape={drawing.shape}>
        <DrawnShape drawn={drawn} unit={unit} />
      </g>
    );
  }
  const reachable = selected && drawing.shape !== 'stroke' && drawing.shape !== 'text';
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a shape of a picture can't be an HTML button. */}
      <g
        ref={mark}
        role="button"
        tabIndex={0}
        aria-label={name}
        aria-pressed={selected}
        data-drawing={drawing.id}
        data-shape={drawing.shape}
        onFocus={() => selectDrawing(drawing.id)}
        onKeyDown={(event) => onKeyDown(event, null)}
        onKeyUp={() => void saveMovedDrawing(context)}
        onBlur={() => void saveMovedDrawing(context)}
      >
        <DrawnShape drawn={drawn} unit={unit} />
      </g>
      {reachable &&
        drawn.points.map((point, pointIndex) => (
          // biome-ignore lint/a11y/useSemanticElements: a point of a picture can't be an HTML button.
          <circle
            // biome-ignore lint/suspicious/noArrayIndexKey: a shape's points are told apart by their index alone.
            key={pointIndex}
            ref={(element) => {
              points.current[pointIndex] = element;
            }}
            className="drawn-point"
            role="button"
            tabIndex={0}
            aria-label={sayDrawings('pointOf', { point: pointName(drawing.shape, pointIndex), drawing: name })}
            data-point={pointIndex}
            cx={point.x}
            cy={point.y}
            r={6 * unit}
            strokeWidth={2 * unit}
            onKeyDown={(event) => onKeyDown(event, pointIndex)}
            onKeyUp={() => void saveMovedDrawing(context)}
            onBlur={() => void saveMovedDrawing(context)}
          />
        ))}
    </>
  );
}
