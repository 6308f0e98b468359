import { useEffect, useMemo, useState } from 'react';
import type { Drawing } from '../../../engine/review/drawings/drawing.ts';
import { showsAt } from '../../../engine/review/drawings/shownFrames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { playhead } from '../state/playhead.ts';

/** The drawings that show at the frame on screen; renders again only when they change, not with every frame. */
export function useShownDrawings(drawings: readonly Drawing[], table: FrameTable): readonly Drawing[] {
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
