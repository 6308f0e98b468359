import { useEffect, useMemo, useState } from 'react';
import type { Drawing } from '../../../engine/review/drawings/drawing.ts';
import { showsAt } from '../../../engine/review/drawings/shownFrames.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { drawingState } from '../state/drawingState.ts';
import { playhead } from '../state/playerState.ts';
import { DrawingMark } from './DrawingMark.tsx';
import { DrawnShape } from './DrawnShape.tsx';

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
