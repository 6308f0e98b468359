import { useEffect, useRef } from 'react';
import { clipAddress } from '../../../electron/contract/addresses.ts';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { frameOnCamera } from '../../../engine/review/camerasOfSet.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { runCommand } from '../../commands/command.ts';
import { FramedPicture } from '../../player/FramedPicture.tsx';
import { createStillPainter } from '../../player/stillPicture.ts';
import { clipTimes } from '../../player/videoLike.ts';
import { type ClipTables, tablesState } from '../../state/clipState.ts';
import { sayCameras } from '../../words/sayCameras.ts';
import { showOtherCamera } from '../commands/cameras.ts';
import { useReviewDesk } from '../commands/ReviewDeskProvider.tsx';
import { playhead } from '../state/playerState.ts';
import { createNewestDrawing } from './newestDrawing.ts';

type OtherCameraProps = {
  readonly clip: Clip;
  readonly tables: ClipTables;
  readonly other: { readonly clip: Clip; readonly media: ClipMedia };
};

/** What another camera of the set shows at the moment on the stage, small in its corner; it steps along, and a click swaps the two. */
export function OtherCamera({ clip, tables, other: { clip: other, media } }: OtherCameraProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const there = tablesState((state) => state.tables[other.id]);
  const { context } = useReviewDesk();
  useEffect(() => void tablesState.getState().load(other.id), [other.id]);
  useEffect(() => {
    const shown = canvas.current;
    if (shown === null || there === undefined || there.table.ticks.length === 0) return;
    const times = clipTimes(there.playback);
    const painter = createStillPainter(clipAddress(other.id), shown, times);
    const drawing = createNewestDrawing({
      draw: (frame) => painter.draw(times.seekSeconds(frame)),
      onShown: (frame) => shown.setAttribute('data-frame', frame === null ? '' : String(frame)),
    });
    const from = { clip, table: tables.table };
    const to = { clip: other, table: there.table };
    const follow = (): void => {
      const now = playhead.getState();
      if (now.clipId === clip.id) drawing.want(frameOnCamera(now.frame, from, to));
    };
    follow();
    const stop = playhead.subscribe(follow);
    return () => {
      stop();
      drawing.dispose();
      painter.dispose();
    };
  }, [clip, tables, other, there]);
  return (
    <button
      type="button"
      className="other-camera"
      title={sayCameras('swap', { clip: other.name })}
      aria-label={sayCameras('swap', { clip: other.name })}
      onClick={() => runCommand(showOtherCamera, context)}
    >
      <span className="framed-place">
        <FramedPicture
          upright={media}
          framing={other.framing}
          footage={<canvas ref={canvas} data-testid="other-camera" />}
        />
      </span>
    </button>
  );
}
