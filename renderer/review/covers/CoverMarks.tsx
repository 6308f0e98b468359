import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { type Box, boxAt, type CoverLook } from '../../../engine/covers/cover.ts';
import { leaveCovering, removeCover, saveMovedCover, selectCover, showMovedBox } from '../commands/covering.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { arrowSteps, asSeen } from '../model/arrows.ts';
import type { Size } from '../model/pictureGeometry.ts';
import { coverState } from '../state/pictureTools.ts';
import { usePlayhead } from '../state/playerState.ts';
import { coverName, useClipCovers } from './clipCovers.ts';
import { keyStepPx, movedBox, sizedBox } from './coverBoxes.ts';

/** What is covered at the frame on screen, over the picture and in its pixels; fainter where nobody is covering now. */
export function CoverMarks({ media, unit }: { readonly media: ClipMedia; readonly unit: number }) {
  const { clipId } = media;
  const covers = useClipCovers(clipId);
  const { covering, selectedId, open } = coverState();
  const [frame, setFrame] = useState(0);
  usePlayhead((now) => {
    if (covers.length > 0 && now.clipId === clipId && now.frame !== frame) setFrame(now.frame);
  });
  return (
    <>
      {covers.map(({ coverId, cover, placed }, index) => {
        const moved = open?.coverId === coverId && open.frame === frame ? open.box : null;
        const box = moved ?? (placed && boxAt(placed, frame));
        return (
          box !== null && (
            <CoverMark
              key={coverId}
              coverId={coverId}
              name={coverName(cover, index)}
              box={box}
              look={cover.look}
              unit={unit}
              picture={media}
              hold={covering === 'off' ? 'none' : cover.kind === 'head' ? 'look' : 'move'}
              selected={coverId === selectedId}
            />
          )
        );
      })}
      {open !== null && open.coverId === null && (
        <g className="cover-mark" data-covering="true" data-selected="true">
          <CoverShape id="new" box={open.box} look="filled" unit={unit} />
        </g>
      )}
    </>
  );
}

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

/** One cover; while covering, a box can be reached and moved by keys, and other keys step on from frame to frame. */
function CoverMark({ coverId, name, box, look, unit, picture, hold, selected }: CoverMarkProps) {
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
    const arrow = arrowSteps[event.key];
    if (arrow !== undefined) {
      context.player?.pause();
      const step = keyStepPx(picture);
      const by = { x: arrow.x * step, y: arrow.y * step };
      const mirrored = context.stage?.clip.framing?.mirrored === true;
      showMovedBox(
        context,
        coverId,
        event.altKey ? sizedBox(box, by, picture) : movedBox(box, asSeen(by, mirrored), picture),
      );
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

type CoverShapeProps = {
  /** Tells this cover's pattern from others'. */
  readonly id: string;
  readonly box: Box;
  readonly look: CoverLook;
  /** Picture pixels that one pixel of the screen covers. */
  readonly unit: number;
};

/** Squares along the longer side of a mosaic, as in what is handed over. */
const squaresAlong = 4;
const tones = ['a', 'b', 'c', 'd'] as const;

/** A cover as it will look: a dark box, or large squares; its rim is for the coach alone. */
function CoverShape({ id, box, look, unit }: CoverShapeProps) {
  const edges = { x: box.leftPx, y: box.topPx, width: box.widthPx, height: box.heightPx };
  const square = Math.max(box.widthPx, box.heightPx) / squaresAlong;
  const pattern = `cover-${id}`;
  return (
    <>
      {look === 'mosaic' && (
        <defs>
          <pattern
            id={pattern}
            patternUnits="userSpaceOnUse"
            x={box.leftPx}
            y={box.topPx}
            width={2 * square}
            height={2 * square}
          >
            {tones.map((tone, index) => (
              <rect
                key={tone}
                className="cover-square"
                data-tone={tone}
                x={(index % 2) * square}
                y={Math.floor(index / 2) * square}
                width={square}
                height={square}
              />
            ))}
          </pattern>
        </defs>
      )}
      <rect className="cover-body" data-look={look} fill={`url(#${pattern})`} {...edges} />
      <rect className="cover-rim" {...edges} strokeWidth={1.5 * unit} />
    </>
  );
}
