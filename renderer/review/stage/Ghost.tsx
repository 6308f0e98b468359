import { useEffect, useRef } from 'react';
import { clipAddress } from '../../../electron/contract/addresses.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { ghostFrame } from '../../player/repFrames.ts';
import { createStillPainter } from '../../player/stillPicture.ts';
import { clipTimes } from '../../player/videoLike.ts';
import type { ClipTables } from '../../state/clipState.ts';
import { playerState, playhead } from '../state/playerState.ts';
import { createNewestDrawing } from './newestDrawing.ts';

/** The rep before, half transparent over the picture at the same phase; shown while its key is held. */
export function Ghost({ clip, tables }: { readonly clip: Clip; readonly tables: ClipTables }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const ghost = playerState((state) => state.ghost);
  useEffect(() => {
    if (ghost === 'hidden' || canvas.current === null) return;
    const shown = canvas.current;
    const times = clipTimes(tables.playback);
    const painter = createStillPainter(clipAddress(clip.id), shown, times);
    const drawing = createNewestDrawing({
      draw: (frame) => painter.draw(times.seekSeconds(frame)),
      onShown: (frame) => {
        shown.toggleAttribute('hidden', frame === null);
        shown.setAttribute('data-frame', frame === null ? '' : String(frame));
      },
    });
    const follow = (): void => drawing.want(ghostFrame(clip.reps, playhead.getState().frame, tables.table));
    follow();
    const stop = playhead.subscribe(follow);
    return () => {
      stop();
      drawing.dispose();
      painter.dispose();
    };
  }, [ghost, clip, tables]);
  return ghost === 'hidden' ? null : <canvas ref={canvas} className="ghost" data-testid="ghost" hidden />;
}
