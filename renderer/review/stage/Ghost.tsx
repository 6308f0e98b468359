import { useEffect, useRef } from 'react';
import { clipAddress } from '../../../electron/contract/addresses.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { clipTimes } from '../../player/clipTimes.ts';
import { ghostFrame } from '../../player/samePhase.ts';
import { createStillPainter } from '../../player/stillPicture.ts';
import type { ClipTables } from '../../state/tablesState.ts';
import { playerState, playhead } from '../state/playerState.ts';

/** The rep before, half transparent over the picture at the same phase; shown while its key is held. */
export function Ghost({ clip, tables }: { readonly clip: Clip; readonly tables: ClipTables }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const ghost = playerState((state) => state.ghost);
  useEffect(() => {
    if (ghost === 'hidden' || canvas.current === null) return;
    const times = clipTimes(tables.playback);
    const painter = createStillPainter(clipAddress(clip.id), canvas.current, times);
    let busy = false;
    let drawn = -1;
    let over = false;
    const draw = async (): Promise<void> => {
      const wanted = ghostFrame(clip.reps, playhead.getState().frame, tables.table);
      if (busy || wanted === null || wanted === drawn) return;
      busy = true;
      await painter.draw(times.seekSeconds(wanted));
      busy = false;
      drawn = wanted;
      canvas.current?.setAttribute('data-frame', String(wanted));
      if (!over) void draw();
    };
    void draw();
    const stop = playhead.subscribe(() => void draw());
    return () => {
      over = true;
      stop();
      painter.dispose();
    };
  }, [ghost, clip, tables]);
  return ghost === 'hidden' ? null : <canvas ref={canvas} className="ghost" data-testid="ghost" />;
}
