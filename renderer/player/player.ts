import type { Later } from '../base/later.ts';
import { createFollower, type FrameStream, type Script } from './follower.ts';
import { createReverse } from './reverse.ts';
import { createSeeker } from './seeker.ts';
import type { ClipTimes, FrameSource, StillPicture, VideoLike } from './videoLike.ts';

/** Frames to play over and over: from `first` up to and with `last`. */
export type Loop = { readonly first: number; readonly last: number };

export type PlayerView = {
  readonly frame: number;
  readonly settled: boolean;
  readonly picture: 'video' | 'canvas';
};

export type PlayerOptions = {
  readonly video: VideoLike;
  readonly times: ClipTimes;
  /** The frames that can be shown: those of the clip's section; all of them without it. */
  readonly within?: Loop | undefined;
  readonly still: StillPicture;
  readonly later: Later;
  /** What plays backwards. */
  readonly source: FrameSource;
  /** What shows the frames of a script. */
  readonly stream: FrameStream;
  readonly now: () => number;
  readonly everyRefresh: (run: () => void) => () => void;
  readonly onView: (view: PlayerView) => void;
  readonly onPlaying: (playing: 'no' | 'forwards' | 'backwards') => void;
  readonly onTrouble: () => void;
  /** Playing backwards passed over a frame that can't be decoded; told once each time it plays. */
  readonly onPassedOver: (frame: number) => void;
};

export type Player = {
  readonly play: () => void;
  /** Plays backwards from here to the start of the clip or the loop. */
  readonly playBackwards: () => void;
  /** Shows frames as a script says, until it is over or something else moves the picture. */
  readonly follow: (script: Script) => void;
  readonly pause: () => void;
  readonly toggle: () => void;
  readonly seekTo: (frame: number) => void;
  /**
   * Steps by frames from where the player is heading. A key held down repeats: those repeats wait until the last step is on
   * screen, so that every frame is seen once, in order.
   */
  readonly step: (frames: number, key: 'pressed' | 'held') => void;
  readonly setSpeed: (speed: number) => void;
  readonly setLoop: (loop: Loop | null) => void;
  /** The frame on screen, or the one a seek is heading for. */
  readonly frame: () => number;
  readonly dispose: () => void;
};

/** The only code that moves a video: playing, looping, and exact steps through the frame table. */
export function createPlayer(options: PlayerOptions): Player {
  const { video, times, later, still, onView, onPlaying, onTrouble } = options;
  const lastFrame = Math.min(options.within?.last ?? times.count - 1, times.count - 1);
  const firstFrame = Math.min(Math.max(0, options.within?.first ?? 0), Math.max(0, lastFrame));
  const inside = (frame: number): number => Math.min(Math.max(firstFrame, Math.trunc(frame)), Math.max(0, lastFrame));
  let view: PlayerView = { frame: 0, settled: false, picture: 'video' };
  let playing: 'no' | 'forwards' | 'backwards' = 'no';
  let following = false;
  let speed = 1;
  let loop: Loop | null = null;
  let handle = 0;
  /** Where playing began, until a frame of it is on screen. */
  let startedAt: number | null = null;

  const show = (next: Partial<PlayerView>): void => {
    view = { ...view, ...next };
    onView(view);
  };
  const seeker = createSeeker({
    video,
    times,
    still,
    later,
    onShown: show,
    onBusy: () => show({ settled: false }),
    onTrouble,
  });

  function watch(): void {
    handle = video.requestVideoFrameCallback((_now, { mediaTime }) => {
      if (playing !== 'forwards') return;
      const frame = times.frameShownAt(mediaTime);
      startedAt = null;
      show({ frame: Math.min(frame, Math.max(0, lastFrame)), settled: false, picture: 'video' });
      if (loop !== null && frame >= within(loop).last) video.currentTime = times.seekSeconds(within(loop).first);
      // Playing past the last frame ends the video, and seeks after that may show a stale frame.
      else if (frame >= lastFrame) return pause();
      watch();
    });
  }

  const reverse = createReverse({
    times,
    source: options.source,
    now: options.now,
    everyRefresh: options.everyRefresh,
    onFrame: (frame) => show({ frame, settled: false, picture: 'canvas' }),
    onPassedOver: options.onPassedOver,
    onEnd: () => pause(),
  });

  /** A loop as far as it lies in what can be shown; all of that without one. */
  const within = (frames: Loop | null): Loop =>
    frames === null
      ? { first: firstFrame, last: lastFrame }
      : { first: inside(frames.first), last: inside(frames.last) };
  const follower = createFollower({
    stream: options.stream,
    everyRefresh: options.everyRefresh,
    onFrame: (frame) => show({ frame, settled: false, picture: 'canvas' }),
    onEnd: () => pause(),
  });

  function follow(script: Script): void {
    pause();
    if (times.count === 0) return;
    seeker.moved();
    following = true;
    begin('forwards');
    follower.start(script);
  }

  function begin(direction: 'forwards' | 'backwards'): void {
    playing = direction;
    onPlaying(direction);
  }

  function playBackwards(): void {
    if (playing === 'backwards' || times.count === 0) return;
    if (playing === 'forwards') pause();
    const from = seeker.heading() ?? view.frame;
    const range = within(loop);
    const isInside = from > range.first && from <= range.last;
    seeker.moved();
    begin('backwards');
    reverse.start(isInside ? from : range.last, speed, range.first);
  }

  function play(): void {
    if (playing === 'forwards' || times.count === 0) return;
    if (playing === 'backwards') pause();
    const from = seeker.heading() ?? view.frame;
    const range = within(loop);
    const outside = from < range.first || from > range.last;
    const start = outside || from >= range.last ? range.first : from;
    seeker.moved();
    startedAt = start;
    begin('forwards');
    watch();
    if (start !== view.frame || view.picture === 'canvas') video.currentTime = times.seekSeconds(start);
    video.play().catch(() => {
      playing = 'no';
      onPlaying('no');
    });
  }

  function pause(): void {
    if (playing === 'no') return;
    if (playing === 'backwards') reverse.stop();
    if (following) follower.stop();
    following = false;
    playing = 'no';
    video.cancelVideoFrameCallback(handle);
    video.pause();
    onPlaying('no');
    // The video may have run on past the frame last reported: settle on that one, or on the one that playing was to begin with.
    const settleOn = startedAt ?? view.frame;
    startedAt = null;
    seeker.seekTo(settleOn);
  }

  function onEnded(): void {
    if (playing !== 'forwards') return;
    if (loop === null) {
      show({ frame: lastFrame });
      pause();
      return;
    }
    video.currentTime = times.seekSeconds(within(loop).first);
    video.play().catch(() => pause());
  }

  function seekTo(frame: number): void {
    const clamped = inside(frame);
    if (playing === 'backwards' || following) pause();
    if (playing === 'forwards') video.currentTime = times.seekSeconds(clamped);
    else seeker.seekTo(clamped);
  }

  video.addEventListener('ended', onEnded);
  video.addEventListener('error', onTrouble);

  return {
    play,
    playBackwards,
    follow,
    pause,
    toggle: () => (playing === 'no' ? play() : pause()),
    seekTo,
    step: (frames, key) => {
      if (playing !== 'no') pause();
      const heading = seeker.heading();
      if (key === 'held' && heading !== null) return;
      seeker.seekTo(inside((heading ?? view.frame) + frames));
    },
    setSpeed: (next) => {
      speed = next;
      video.playbackRate = next;
      reverse.setSpeed(next);
    },
    setLoop: (next) => {
      loop = next;
    },
    frame: () => (playing !== 'no' ? view.frame : (seeker.heading() ?? view.frame)),
    dispose: () => {
      playing = 'no';
      reverse.stop();
      follower.stop();
      seeker.dispose();
      video.cancelVideoFrameCallback(handle);
      video.removeEventListener('ended', onEnded);
      video.removeEventListener('error', onTrouble);
      video.pause();
    },
  };
}
