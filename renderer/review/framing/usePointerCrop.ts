import { type RefObject, useEffect } from 'react';
import type { Crop } from '../../../engine/framing/framing.ts';
import { listenToPointer } from '../../base/listenToPointer.ts';
import { saveOpenCrop, showCrop } from '../commands/framing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { type Point, pictureAt, pictureScale, type SeenPicture } from '../model/pictureGeometry.ts';
import { cropThrough, framingOf, movedCrop } from '../model/shownFraming.ts';
import { framingState } from '../state/framingState.ts';

/** The shortest drag that draws a part, and how near an edge is taken hold of, in screen pixels. */
const drawnPx = 12;
const nearPx = 12;

type Doing = { readonly from: Point; readonly crop: Crop | null; readonly hold: 'draw' | 'move' | Point };

/** The corner that stays while the one near a point is dragged; null away from the corners. */
function oppositeCorner({ leftPx, topPx, widthPx, heightPx }: Crop, at: Point, within: number): Point | null {
  const [right, bottom] = [leftPx + widthPx, topPx + heightPx];
  const corners = [
    [leftPx, topPx, right, bottom],
    [right, topPx, leftPx, bottom],
    [leftPx, bottom, right, topPx],
    [right, bottom, leftPx, topPx],
  ] as const;
  const near = corners.find(([x, y]) => Math.hypot(at.x - x, at.y - y) <= within);
  return near === undefined ? null : { x: near[2], y: near[3] };
}

const liesIn = ({ leftPx, topPx, widthPx, heightPx }: Crop, { x, y }: Point): boolean =>
  x >= leftPx && y >= topPx && x <= leftPx + widthPx && y <= topPx + heightPx;

/** Draws the part of the picture that stays, moves it, and drags its corners. */
export function usePointerCrop(layer: RefObject<SVGSVGElement | null>, { width, height, mirrored }: SeenPicture): void {
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
      if (event.button !== 0 || framingState.getState().framing === 'off' || context.stage === null) return;
      event.preventDefault();
      element.setPointerCapture(event.pointerId);
      const from = at(event);
      const { crop } = framingOf(context.stage.clip);
      const corner = crop && oppositeCorner(crop, from, within(nearPx));
      doing = { from, crop, hold: corner ?? (crop !== null && liesIn(crop, from) ? 'move' : 'draw') };
    };
    const onMove = (event: PointerEvent): void => {
      if (doing === null) return;
      const { from, crop, hold } = doing;
      const point = at(event);
      if (hold === 'move' && crop !== null) {
        showCrop(movedCrop(crop, { x: point.x - from.x, y: point.y - from.y }, picture));
      } else if (hold !== 'draw' && hold !== 'move') showCrop(cropThrough(hold, point, picture));
      else if (Math.hypot(point.x - from.x, point.y - from.y) > within(drawnPx)) {
        showCrop(cropThrough(from, point, picture));
      }
    };
    const onUp = (): void => {
      doing = null;
      void saveOpenCrop(context);
    };
    const onCancel = (): void => {
      doing = null;
      framingState.setState({ open: null });
    };
    return listenToPointer(element, { onDown, onMove, onUp, onCancel });
  }, [context, layer, width, height, mirrored]);
}
