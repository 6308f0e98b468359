import { clipAddress } from '../../electron/contract/addresses.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';
import { everyRefresh, later } from '../base/later.ts';
import { clipTimes } from './clipTimes.ts';
import { createPlayer, type Player, type PlayerOptions } from './player.ts';
import { createStillPainter } from './stillPicture.ts';

type ClipPlayerOptions = Pick<PlayerOptions, 'onView' | 'onPlaying' | 'onTrouble'> & {
  readonly clipId: string;
  readonly video: HTMLVideoElement;
  /** Lies over the video and shows the frames it can't. */
  readonly canvas: HTMLCanvasElement;
  readonly playback: FrameTable;
};

/** The player of a clip's video and canvas; disposing of it lets go of its decoded frames too. */
export function createClipPlayer({ clipId, video, canvas, playback, ...told }: ClipPlayerOptions): Player {
  const times = clipTimes(playback);
  const painter = createStillPainter(clipAddress(clipId), canvas, times);
  const player = createPlayer({
    ...told,
    video,
    times,
    still: painter.draw,
    source: painter.source,
    later,
    now: () => performance.now(),
    everyRefresh,
  });
  return {
    ...player,
    dispose: () => {
      player.dispose();
      painter.dispose();
    },
  };
}
