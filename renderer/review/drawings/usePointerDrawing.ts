import { type RefObject, useEffect } from 'react';
import { type Drawn, drawnOf, type Point } from '../../../engine/review/drawings/drawing.ts';
import { distancePx, moveDrawn, movePoint } from '../../../engine/review/drawings/geometry.ts';
import { listenToPointer } from '../../base/listenToPointer.ts';
import { addDrawn, drawingAt, drawingsOnStage, saveMovedDrawing } from '../commands/drawing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import type { ReviewContext } from '../commands/reviewContext.ts';
import { pictureAt, pictureScale, type SeenPicture } from '../model/pictureGeometry.ts';
import { drawingState } from '../state/pictureTools.ts';
import { type PointedShape, pointsNeeded, shapeThrough } from './shapes.ts';

/** The distance that grabs a drawing, and the shortest move that counts, in screen pixels. */
const nearPx = 10;
const movedPx = 5;
const mostPoints = 2000;

/** What the pointer is doing between being pressed and being let go. */
type Doing =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'stroke'; readonly points: readonly Point[] }
  | {
      readonly kind: 'points';
      readonly shape: PointedShape;
      readonly points: readonly Point[];
      readonly pressed: boolean;
    }
  | {
      readonly kind: 'move';
      readonly drawingId: string;
      readonly from: Point;
      readonly drawn: Drawn;
      readonly point: number | null;
    };

const nothing: Doing = { kind: 'nothing' };

const showNew = (drawn: Drawn | null): void =>
  drawingState.setState({ open: drawn === null ? null : { drawingId: null, drawn } });

/** What is grabbed at a point: a point of the selected drawing before any drawing as a whole. */
function grab(context: ReviewContext, at: Point, withinPx: number, target: EventTarget | null): Doing {
  const { selectedId } = drawingState.getState();
  const selected = drawingsOnStage(context).find(({ id }) => id === selectedId);
  if (selected !== undefined && selected.shape !== 'stroke' && selected.shape !== 'text') {
    const point = selected.points.findIndex((known) => distancePx(known, at) <= withinPx);
    if (point >= 0) return { kind: 'move', drawingId: selected.id, from: at, drawn: drawnOf(selected), point };
  }
  const under = target instanceof Element ? target.closest('[data-drawing]')?.getAttribute('data-drawing') : null;
  const drawing = drawingsOnStage(context).find(({ id }) => id === under) ?? drawingAt(context, at, withinPx);
  if (drawing == null) return nothing;
  return { kind: 'move', drawingId: drawing.id, from: at, drawn: drawnOf(drawing), point: null };
}

/** Draws, selects and drags with the pointer; listens on the layer itself, before the stage pans by the same drag. */
export function usePointerDrawing(
  layer: RefObject<SVGSVGElement | null>,
  { width, height, mirrored = false }: SeenPicture,
): void {
  const context = useReview();
  useEffect(() => {
    const element = layer.current;
    if (element === null) return;
    let doing: Doing = nothing;
    const picture = { width, height, mirrored };
    const at = (event: PointerEvent): Point =>
      pictureAt({ x: event.clientX, y: event.clientY }, element.getBoundingClientRect(), picture);
    const within = (px: number): number => px / pictureScale(element.getBoundingClientRect(), picture);

    const takePoint = (shape: PointedShape, points: readonly Point[], pressed: boolean): void => {
      const drawn = shapeThrough(shape, points);
      showNew(drawn);
      if (points.length < pointsNeeded[shape] || drawn === null) {
        doing = { kind: 'points', shape, points, pressed };
        return;
      }
      doing = nothing;
      void addDrawn(context, drawn);
    };
    const begin = (event: PointerEvent): void => {
      const { tool } = drawingState.getState();
      const point = at(event);
      if (tool === 'select') {
        doing = grab(context, point, within(nearPx), event.target);
        if (doing.kind === 'move') drawingState.setState({ selectedId: doing.drawingId, focusNext: 'drawing' });
        else drawingState.setState({ selectedId: null });
      } else if (tool === 'text') drawingState.setState({ writing: { drawingId: null, at: point, words: '' } });
      else if (tool === 'stroke') doing = { kind: 'stroke', points: [point] };
      else takePoint(tool, doing.kind === 'points' && doing.shape === tool ? [...doing.points, point] : [point], true);
    };
    const onDown = (event: PointerEvent): void => {
      if (event.button !== 0 || drawingState.getState().drawing === 'off') return;
      context.player?.pause();
      begin(event);
      if (drawingState.getState().tool === 'select' && doing.kind === 'nothing') return;
      event.preventDefault();
      element.setPointerCapture(event.pointerId);
    };
    const onMove = (event: PointerEvent): void => {
      const point = at(event);
      if (doing.kind === 'points') showNew(shapeThrough(doing.shape, [...doing.points, point]));
      else if (doing.kind === 'move') {
        const by = { x: point.x - doing.from.x, y: point.y - doing.from.y };
        const drawn = doing.point === null ? moveDrawn(doing.drawn, by) : movePoint(doing.drawn, doing.point, point);
        if (distancePx(point, doing.from) > 0) drawingState.setState({ open: { drawingId: doing.drawingId, drawn } });
      } else if (doing.kind === 'stroke') {
        const last = doing.points.at(-1);
        if (last !== undefined && distancePx(last, point) < within(2)) return;
        if (doing.points.length >= mostPoints) return;
        doing = { kind: 'stroke', points: [...doing.points, point] };
        showNew({ shape: 'stroke', points: [...doing.points] });
      }
    };
    const onUp = (event: PointerEvent): void => {
      if (doing.kind === 'move') {
        doing = nothing;
        void saveMovedDrawing(context);
      } else if (doing.kind === 'stroke') {
        const points = [...doing.points];
        doing = nothing;
        if (points.length > 1) void addDrawn(context, { shape: 'stroke', points });
      } else if (doing.kind === 'points' && doing.pressed) {
        const point = at(event);
        const last = doing.points.at(-1);
        const dragged = last !== undefined && distancePx(last, point) > within(movedPx);
        takePoint(doing.shape, dragged ? [...doing.points, point] : doing.points, false);
      }
    };
    const onCancel = (): void => {
      doing = nothing;
      drawingState.setState({ open: null });
    };
    const stop = drawingState.subscribe((now, before) => {
      const letGo = doing.kind === 'points' && now.open === null && before.open !== null;
      if (letGo || now.tool !== before.tool || now.drawing !== before.drawing) doing = nothing;
    });
    const stopListening = listenToPointer(element, { onDown, onMove, onUp, onCancel });
    return () => {
      stop();
      stopListening();
    };
  }, [context, layer, width, height, mirrored]);
}
