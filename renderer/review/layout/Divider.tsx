import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import { sayStage } from '../../words/sayStage.ts';
import { dividerStep } from '../commands/arranging.ts';
import { layoutState, type PictureShape } from '../state/layoutState.ts';

/** Keeps `shownShare` at what the picture's side has on screen: limits of both sides may keep it from what was asked for. */
function useShownShare(divider: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const grid = divider.current?.parentElement;
    const side = divider.current?.previousElementSibling;
    if (grid == null || side == null) return;
    const measure = (): void => {
      const { width } = grid.getBoundingClientRect();
      if (width > 0) layoutState.getState().showShare(side.getBoundingClientRect().width / width);
    };
    const sizes = new ResizeObserver(measure);
    sizes.observe(side);
    sizes.observe(grid);
    return () => sizes.disconnect();
  }, [divider]);
}

/** Between the picture and the scorecard: dragged, or moved by arrows; a double click or Enter lets the picture decide again. */
export function Divider({ shape }: { readonly shape: PictureShape }) {
  const divider = useRef<HTMLDivElement>(null);
  const share = layoutState((state) => state.shownShare);
  useShownShare(divider);
  const set = (to: number | null): void => layoutState.getState().setShare(shape, to);
  const onPointerMove = ({ currentTarget, pointerId, clientX }: PointerEvent<HTMLDivElement>): void => {
    const box = currentTarget.parentElement?.getBoundingClientRect();
    if (box === undefined || !currentTarget.hasPointerCapture(pointerId)) return;
    set((clientX - box.left) / box.width);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.shiftKey || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'ArrowLeft') set(share - dividerStep);
    else if (event.key === 'ArrowRight') set(share + dividerStep);
    else if (event.key === 'Home') set(0);
    else if (event.key === 'End') set(1);
    else if (event.key === 'Enter') set(null);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a rule can't be moved
    <div
      ref={divider}
      className="divider"
      role="separator"
      tabIndex={0}
      aria-orientation="vertical"
      aria-label={sayStage('divider')}
      aria-description={sayStage('dividerHint')}
      title={sayStage('dividerHint')}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={Math.round(share * 100)}
      onPointerDown={(event) => {
        event.preventDefault();
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={onPointerMove}
      onDoubleClick={() => set(null)}
      onKeyDown={onKeyDown}
    />
  );
}
