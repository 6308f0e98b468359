import { type RefObject, useEffect } from 'react';
import type { Box } from '../../../engine/covers/cover.ts';
import type { Point } from '../../../engine/review/drawings/drawing.ts';
import { listenToPointer } from '../../base/listenToPointer.ts';
import { addBox, boxOnScreen, coversOnStage, saveMovedCover, selectCover, showMovedBox } from '../commands/covering.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import type { ReviewContext } from '../commands/reviewContext.ts';
import { pictureAt, pictureScale, type SeenPicture } from '../model/pictureGeometry.ts';
import { coverState } from '../state/pictureTools.ts';
import { boxHolds, boxThrough, draggedCorner, movedBox } from './coverBoxes.ts';

/** The distance that grabs a corner, and the shortest side that counts as drawn, in screen pixels. */
const nearPx = 12;
const drawnPx = 8;

/** What the pointer is doing between being pressed and being let go. */
type Doing =
  | { readonly kind: 'draw'; readonly from: Point }
  | { readonly kind: 'move' | 'corner'; readonly coverId: string; readonly from: Point; readonly box: Box };

/** What is grabbed at a point: the corner of the selected box, else the box on top there; null = nothing is there. */
function grab(context: ReviewContext, at: Point, withinPx: number): Doing | null {
  const boxes = coversOnStage(context).flatMap((kept) => {
    const box = boxOnScreen(context, kept);
    return box === null ? [] : [{ coverId: kept.coverId, box }];
  });
  const selected = boxes.find(({ coverId }) => coverId === coverState.getState().selectedId);
  if (selected !== undefined) {
    const { leftPx, topPx, widthPx, heightPx } = selected.box;
    const away = Math.hypot(at.x - leftPx - widthPx, at.y - topPx - heightPx);
    if (away <= withinPx) return { kind: 'corner', from: at, ...selected };
  }
  const under = selected && boxHolds(selected.box, at) ? selected : boxes.findLast(({ box }) => boxHolds(box, at));
  return under === undefined ? null : { kind: 'move', from: at, ...under };
}

/** Draws new covers and drags those that are there; listens on the layer itself, before the stage pans by the same drag. */
export function usePointerCovers(
  layer: RefObject<SVGSVGElement | null>,
  { width, height, mirrored = false }: SeenPicture,
): void {
  const context = useReview();
  useEffect(() => {
    const element = layer.current;
    if (element === null) return;
    const picture = { width, height, mirrored };
    let doing: Doing | null = null;
    const at = (event: PointerEvent): Point =>
      pictureAt({ x: event.clientX, y: event.clientY }, element.getBoundingClientRect(), picture);
    const within = (px: number): number => px / pictureScale(element.getBoundingClientRect(), picture);

    const onDown = (event: PointerEvent): void => {
      if (event.button !== 0 || coverState.getState().covering === 'off') return;
      event.preventDefault();
      element.setPointerCapture(event.pointerId);
      context.player?.pause();
      const point = at(event);
      doing = grab(context, point, within(nearPx)) ?? { kind: 'draw', from: point };
      if (doing.kind === 'draw') selectCover(null);
      else coverState.setState({ selectedId: doing.coverId, focusNext: 'cover' });
    };
    const onMove = (event: PointerEvent): void => {
      if (doing === null) return;
      const point = at(event);
      if (doing.kind === 'draw') {
        const { frame } = context;
        coverState.setState({ open: { coverId: null, frame, box: boxThrough(doing.from, point, picture) } });
      } else if (doing.kind === 'corner') showMovedBox(context, doing.coverId, draggedCorner(doing.box, point));
      else {
        const by = { x: point.x - doing.from.x, y: point.y - doing.from.y };
        if (by.x !== 0 || by.y !== 0) showMovedBox(context, doing.coverId, movedBox(doing.box, by, picture));
      }
    };
    const onUp = (event: PointerEvent): void => {
      if (doing === null) return;
      const { kind, from } = doing;
      doing = null;
      if (kind !== 'draw') {
        void saveMovedCover(context);
        return;
      }
      const box = boxThrough(from, at(event), picture);
      if (Math.min(box.widthPx, box.heightPx) >= within(drawnPx)) void addBox(context, box);
      else coverState.setState({ open: null });
    };
    const onCancel = (): void => {
      doing = null;
      coverState.setState({ open: null });
    };
    const stop = coverState.subscribe((now, before) => {
      if (now.covering !== before.covering) doing = null;
    });
    const stopListening = listenToPointer(element, { onDown, onMove, onUp, onCancel });
    return () => {
      stop();
      stopListening();
    };
  }, [context, layer, width, height, mirrored]);
}
