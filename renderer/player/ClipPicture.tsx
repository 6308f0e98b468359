import type { RefObject } from 'react';
import { clipAddress } from '../../electron/contract/addresses.ts';
import type { Clip } from '../../engine/review/review.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';
import { everyRefresh, later } from '../base/later.ts';
import { statusState } from '../bridge/statusState.ts';
import { sayStage } from '../words/sayStage.ts';
import { createPlayer, type Player, type PlayerOptions } from './player.ts';
import { createStillPainter } from './stillPicture.ts';
import { clipTimes } from './videoLike.ts';

type ClipPictureProps = {
  readonly clip: Clip;
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  readonly onLoaded: () => void;
  readonly onTrouble: () => void;
};

/** The video of a clip, and over it the canvas for frames that it can't show. */
export function ClipPicture({ clip, video, canvas, onLoaded, onTrouble }: ClipPictureProps) {
  return (
    <>
      <video
        ref={video}
        src={clipAddress(clip.id)}
        preload="auto"
        muted
        playsInline
        tabIndex={-1}
        // Its controls are the screen's own; what it shows is told by the name of its place and by the position in the clip.
        aria-hidden="true"
        onLoadedMetadata={onLoaded}
        onError={onTrouble}
      />
      <canvas ref={canvas} hidden />
    </>
  );
}

type ClipPlayerOptions = Pick<PlayerOptions, 'within' | 'onView' | 'onPlaying' | 'onTrouble'> & {
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
    onPassedOver: (frame) =>
      statusState.getState().tell(sayStage('passedOver', { frame: frame - (told.within?.first ?? 0) })),
    video,
    times,
    still: painter.draw,
    source: painter.source,
    stream: painter.stream,
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
