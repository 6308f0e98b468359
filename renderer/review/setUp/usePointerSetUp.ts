import { type RefObject, useEffect } from 'react';
import type { PointPx } from '../../../engine/recording/recording.ts';
import { listenToPointer } from '../../base/listenToPointer.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { setPoints } from '../commands/settingUp.ts';
import { pictureAt, pictureScale, type SeenPicture } from '../model/pictureGeometry.ts';
import { pointsWanted, setUpState } from '../state/pictureTools.ts';

/** The distance that grabs a point, and the shortest drag that counts, in screen pixels. */
const nearPx = 12;
const draggedPx = 6;

const apartPx = (one: PointPx, other: PointPx): number => Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);

/** Places and drags the points of the set-up's tools with the pointer; the last point of a tool sets them all. */
export function usePointerSetUp(
  layer: RefObject<SVGSVGElement | null>,
  { width, height, mirrored = false }: SeenPicture,
): void {
  const context = useReview();
  useEffect(() => {
    const element = layer.current;
    if (element === null) return;
    const picture = { width, height, mirrored };
    let held: { readonly index: number; readonly from: PointPx; readonly fresh: boolean } | null = null;
    const at = (event: PointerEvent): PointPx => {
      const { x, y } = pictureAt({ x: event.clientX, y: event.clientY }, element.getBoundingClientRect(), picture);
      return { xPx: Math.min(Math.max(0, x), width), yPx: Math.min(Math.max(0, y), height) };
    };
    const within = (px: number): number => px / pictureScale(element.getBoundingClientRect(), picture);

    const onDown = (event: PointerEvent): void => {
      const { settingUp, tool, points } = setUpState.getState();
      if (event.button !== 0 || settingUp === 'off') return;
      event.preventDefault();
      element.setPointerCapture(event.pointerId);
      context.player?.pause();
      const point = at(event);
      const known = points.findIndex((one) => apartPx(one, point) <= within(nearPx));
      if (known >= 0) {
        held = { index: known, from: point, fresh: false };
        return;
      }
      const kept = points.length >= pointsWanted[tool] ? [] : points;
      held = { index: kept.length, from: point, fresh: true };
      setUpState.setState({ points: [...kept, point] });
    };
    const onMove = (event: PointerEvent): void => {
      if (held === null) return;
      const { tool, points } = setUpState.getState();
      const { index, from, fresh } = held;
      // A disc is drawn out from its middle, which stays.
      if (tool === 'disc' && fresh) {
        const radiusPx = apartPx(from, at(event));
        setUpState.setState({ radiusPx: radiusPx > within(draggedPx) ? radiusPx : null });
        return;
      }
      // A box is drawn out from its first corner.
      if (tool === 'discBox' && fresh && index === 0) {
        const corner = at(event);
        setUpState.setState({ points: apartPx(from, corner) > within(draggedPx) ? [from, corner] : [from] });
        return;
      }
      setUpState.setState({ points: points.map((one, known) => (known === index ? at(event) : one)) });
    };
    const onUp = (): void => {
      if (held === null) return;
      const { fresh } = held;
      held = null;
      const { tool, points } = setUpState.getState();
      if (fresh && points.length === pointsWanted[tool]) void setPoints(context);
    };
    const onCancel = (): void => {
      held = null;
    };
    return listenToPointer(element, { onDown, onMove, onUp, onCancel });
  }, [context, layer, width, height, mirrored]);
}
