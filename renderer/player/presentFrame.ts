import type { Later } from '../base/later.ts';
import type { VideoLike } from './videoLike.ts';

export type PresentOptions = {
  readonly video: VideoLike;
  readonly atSeconds: number;
  readonly later: Later;
  /** Whether a painted frame's media time is the one asked for. */
  readonly isFrame: (mediaTimeSeconds: number) => boolean;
};

/** How long a frame may take to be painted after the video says it has arrived. */
const graceMs = 300;
/** How long a seek may take at all: a long group of pictures on a slow disk. */
const patienceMs = 5000;

/**
 * Seeks and waits until the frame is painted. The callback is registered before the seek, since the frame may be painted at
 * once; and `seeked` alone proves nothing, since the old frame may still be on screen then.
 */
export function presentFrame({
  video,
  atSeconds,
  later,
  isFrame,
}: PresentOptions): Promise<'shown' | 'other' | 'silent'> {
  return new Promise((resolve) => {
    let arrived = false;
    let handle = 0;
    let callOffGrace = (): void => {};

    const finish = (outcome: 'shown' | 'other' | 'silent'): void => {
      video.cancelVideoFrameCallback(handle);
      video.removeEventListener('seeked', onSeeked);
      callOffGrace();
      callOffPatience();
      resolve(outcome);
    };
    const onFrame = (_now: number, metadata: { readonly mediaTime: number }): void => {
      if (isFrame(metadata.mediaTime)) finish('shown');
      else if (arrived) finish('other');
      // A late frame of what was shown before; the one asked for is still to come.
      else handle = video.requestVideoFrameCallback(onFrame);
    };
    const onSeeked = (): void => {
      arrived = true;
      callOffGrace = later(graceMs, () => finish('silent'));
    };

    const callOffPatience = later(patienceMs, () => finish('silent'));
    video.addEventListener('seeked', onSeeked);
    handle = video.requestVideoFrameCallback(onFrame);
    video.currentTime = atSeconds;
  });
}
