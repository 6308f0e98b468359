import type { Later } from '../base/later.ts';
import type { ClipTimes, StillPicture, VideoLike } from './videoLike.ts';

/** What a seek put on screen; `settled` is false when the next seek waits already. */
type Shown = { readonly frame: number; readonly picture: 'video' | 'canvas'; readonly settled: boolean };

type SeekerOptions = {
  readonly video: VideoLike;
  readonly times: ClipTimes;
  readonly still: StillPicture;
  readonly later: Later;
  readonly onShown: (shown: Shown) => void;
  readonly onBusy: () => void;
  /** Neither the video nor the decoder can show a frame. */
  readonly onTrouble: () => void;
};

type Seeker = {
  /** Shows a frame, clamped to the clip. While one seek runs, only the latest request is kept. */
  readonly seekTo: (frame: number) => void;
  /** The frame that will be on screen once all is settled; null when nothing is under way. */
  readonly heading: () => number | null;
  /** Lets go of every seek and of what is on screen, because playing moves the video. */
  readonly moved: () => void;
  readonly dispose: () => void;
};

/**
 * Seeks of a paused video, one at a time, each checked: the video says which frame it painted, and when that is not
 * the one asked for, the frame is decoded and drawn over it.
 */
export function createSeeker(options: SeekerOptions): Seeker {
  const { video, times, still, later, onShown, onBusy, onTrouble } = options;
  let wanted: number | null = null;
  let running: number | null = null;
  let onScreen: Omit<Shown, 'settled'> | null = null;
  /** What a seek brings counts only while nothing has moved the video since. */
  let course = 0;
  let callOff = (): void => {};

  async function showOne(frame: number): Promise<void> {
    const mine = course;
    const atSeconds = times.seekSeconds(frame);
    const isFrame = (seconds: number): boolean => times.frameShownAt(seconds) === frame;
    const seeking = presentFrame({ video, atSeconds, later, isFrame });
    callOff = seeking.callOff;
    const painted = await seeking.outcome;
    if (mine !== course) return;
    if (painted === 'shown') {
      onScreen = { frame, picture: 'video' };
      onShown({ ...onScreen, settled: wanted === null });
      return;
    }
    if (wanted !== null) return;
    const drawn = await still(atSeconds);
    if (mine !== course || wanted !== null) return;
    if (!drawn) {
      onTrouble();
      return;
    }
    onScreen = { frame, picture: 'canvas' };
    onShown({ ...onScreen, settled: true });
  }

  async function run(): Promise<void> {
    const mine = course;
    while (wanted !== null) {
      running = wanted;
      wanted = null;
      if (onScreen !== null && running === onScreen.frame) {
        onShown({ ...onScreen, settled: wanted === null });
        continue;
      }
      onScreen = null;
      await showOne(running);
      if (mine !== course) return;
    }
    running = null;
  }

  function leave(): void {
    course += 1;
    callOff();
    wanted = null;
    running = null;
    onScreen = null;
  }

  return {
    seekTo: (frame) => {
      if (times.count === 0) return;
      const clamped = Math.min(Math.max(0, Math.trunc(frame)), times.count - 1);
      if (running === null && clamped === onScreen?.frame) return;
      wanted = clamped;
      onBusy();
      if (running === null) void run();
    },
    heading: () => wanted ?? running,
    moved: leave,
    dispose: leave,
  };
}

type PresentOptions = {
  readonly video: VideoLike;
  readonly atSeconds: number;
  readonly later: Later;
  /** Whether a painted frame's media time is the one asked for. */
  readonly isFrame: (mediaTimeSeconds: number) => boolean;
};

type Outcome = 'shown' | 'other' | 'silent';
type Presenting = { readonly outcome: Promise<Outcome>; readonly callOff: () => void };

/** How long a frame may take to be painted after the video says it has arrived. */
const graceMs = 300;
/** How long a seek may take at all: a long group of pictures on a slow disk. */
const patienceMs = 5000;

/**
 * Seeks and waits until the frame is painted. The callback is registered before the seek, since the frame may be painted at
 * once; and `seeked` alone proves nothing, since the old frame may still be on screen then.
 */
function presentFrame({ video, atSeconds, later, isFrame }: PresentOptions): Presenting {
  const { promise: outcome, resolve } = Promise.withResolvers<Outcome>();
  let arrived = false;
  let handle = 0;
  let callOffGrace = (): void => {};

  const finish = (how: Outcome): void => {
    video.cancelVideoFrameCallback(handle);
    video.removeEventListener('seeked', onSeeked);
    callOffGrace();
    callOffPatience();
    resolve(how);
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
  return { outcome, callOff: () => finish('silent') };
}
