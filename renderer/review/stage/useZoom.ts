import { type RefObject, useEffect } from 'react';
import type { Point } from '../model/pictureGeometry.ts';
import { zoomState } from '../state/viewState.ts';

const pointIn = (box: DOMRect, event: { readonly clientX: number; readonly clientY: number }): Point => ({
  x: event.clientX - box.left,
  y: event.clientY - box.top,
});

/** Zooms the stage with the wheel at the pointer, and pans it by dragging once it is zoomed. */
export function useZoom(stage: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = stage.current;
    if (element === null) return;
    const measure = (): void =>
      zoomState.getState().setStage({ width: element.clientWidth, height: element.clientHeight });
    const sizes = new ResizeObserver(measure);
    sizes.observe(element);
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      zoomState.getState().zoomBy(2 ** (-event.deltaY / 300), pointIn(element.getBoundingClientRect(), event));
    };
    let last: Point | null = null;
    const onDown = (event: PointerEvent): void => {
      if (event.defaultPrevented || event.button > 1 || zoomState.getState().zoom.scale === 1) return;
      last = { x: event.clientX, y: event.clientY };
      element.setPointerCapture(event.pointerId);
    };
    const onMove = (event: PointerEvent): void => {
      if (last === null) return;
      zoomState.getState().pan({ x: event.clientX - last.x, y: event.clientY - last.y });
      last = { x: event.clientX, y: event.clientY };
    };
    const onUp = (): void => {
      last = null;
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    element.addEventListener('pointerdown', onDown);
    element.addEventListener('pointermove', onMove);
    element.addEventListener('pointerup', onUp);
    element.addEventListener('pointercancel', onUp);
    return () => {
      sizes.disconnect();
      element.removeEventListener('wheel', onWheel);
      element.removeEventListener('pointerdown', onDown);
      element.removeEventListener('pointermove', onMove);
      element.removeEventListener('pointerup', onUp);
      element.removeEventListener('pointercancel', onUp);
    };
  }, [stage]);
}
