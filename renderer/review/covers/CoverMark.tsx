import { type KeyboardEvent, useEffect, useRef } from 'react';
import type { Box, CoverLook } from '../../../engine/covers/cover.ts';
import type { Point } from '../../../engine/review/drawings/drawing.ts';
import { leaveCovering, removeCover, saveMovedCover, selectCover, showMovedBox } from '../commands/covering.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import type { Size } from '../model/pictureGeometry.ts';
import { coverState } from '../state/coverState.ts';
import { CoverShape } from './CoverShape.tsx';
import { keyStepPx, movedBox, sizedBox } from './coverBoxes.ts';

type CoverMarkProps = {
  readonly coverId: string;
  readonly name: string;
  readonly box: Box;
  readonly look: CoverLook;
  readonly unit: number;
  readonly picture: Size;
  /** `move`: it can be reached and moved; `look`: it shows in full; `none`: nobody is covering now. */
  readonly hold: 'move' | 'look' | 'none';
  readonly selected: boolean;
};

const arrows: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** One cover; while covering, a box can be reached and moved by keys, and other keys step on from frame to frame. */
export function CoverMark({ coverId, name, box, look, unit, picture, hold, selected }: CoverMarkProps) {
  const context = useReview();
  const mark = useRef<SVGGElement>(null);
  const wantsFocus = coverState((state) => selected && hold === 'move' && state.focusNext === 'cover');
  useEffect(() => {
    if (!wantsFocus) return;
    mark.current?.focus({ preventScroll: true });
    coverState.setState({ focusNext: null });
  }, [wantsFocus]);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    const arrow = arrows[event.key];
    if (arrow !== undefined) {
      context.player?.pause();
      const step = keyStepPx(picture);
      const by = { x: arrow.x * step, y: arrow.y * step };
      showMovedBox(context, coverId, event.altKey ? sizedBox(box, by, picture) : movedBox(box, by, picture));
    } else if (event.key === 'Enter' || event.key === ' ') selectCover(coverId);
    else if (event.key === 'Delete' || event.key === 'Backspace') void removeCover(coverId);
    else if (event.key === 'Escape') leaveCovering(context);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const looks = { 'data-cover': coverId, 'data-covering': hold !== 'none', 'data-selected': selected };
  if (hold !== 'move') {
    return (
      // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of shapes is one picture to a reader.
      <g className="cover-mark" role="img" aria-label={name} {...looks}>
        <CoverShape id={coverId} box={box} look={look} unit={unit} />
      </g>
    );
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a shape of a picture can't be an HTML button.
    <g
      ref={mark}
      className="cover-mark"
      role="button"
      tabIndex={0}
      aria-label={name}
      aria-pressed={selected}
      {...looks}
      onFocus={() => selectCover(coverId)}
      onKeyDown={onKeyDown}
      onKeyUp={() => void saveMovedCover(context)}
      onBlur={() => void saveMovedCover(context)}
    >
      <CoverShape id={coverId} box={box} look={look} unit={unit} />
      {selected && (
        <circle
          className="drawn-point cover-corner"
          cx={box.leftPx + box.widthPx}
          cy={box.topPx + box.heightPx}
          r={6 * unit}
          strokeWidth={2 * unit}
        />
      )}
    </g>
  );
}
