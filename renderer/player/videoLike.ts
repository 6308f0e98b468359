import { nearestFrame, seekTargetUs } from '../../engine/time/frames.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';

/** What the player needs of a `<video>`; a test can stand in for it. */
export type VideoLike = {
  currentTime: number;
  playbackRate: number;
  readonly paused: boolean;
  readonly seeking: boolean;
  readonly play: () => Promise<void>;
  readonly pause: () => void;
  readonly requestVideoFrameCallback: (
    callback: (now: number, metadata: { readonly mediaTime: number }) => void,
  ) => number;
  readonly cancelVideoFrameCallback: (handle: number) => void;
  readonly addEventListener: (type: 'seeked' | 'ended' | 'error', listener: () => void) => void;
  readonly removeEventListener: (type: 'seeked' | 'ended' | 'error', listener: () => void) => void;
};

/** A decoded frame, to be drawn over the video and closed. */
export type Picture = { readonly draw: () => void; readonly close: () => void };

/** Decodes the frames from `first` up to and with `last`; those it could not are missing. */
export type FrameSource = (first: number, last: number) => Promise<ReadonlyMap<number, Picture>>;

/** Draws the frame to be seen at a media time over the video; false when it can't. */
export type StillPicture = (atSeconds: number) => Promise<boolean>;

/** A clip's frame times as the player needs them. */
export type ClipTimes = {
  readonly count: number;
  /** Where to seek for a frame: the middle of its time on screen, so that rounding can't reach a neighbour. */
  readonly seekSeconds: (frame: number) => number;
  /** The frame that a painted picture's media time belongs to. */
  readonly frameShownAt: (mediaTimeSeconds: number) => number;
};

/** Times of what the window plays, from its frame table. */
export const clipTimes = (playback: FrameTable): ClipTimes => ({
  count: playback.ticks.length,
  seekSeconds: (frame) => seekTargetUs(playback, frame) / 1_000_000,
  frameShownAt: (mediaTimeSeconds) => nearestFrame(playback, Math.round(mediaTimeSeconds * 1_000_000)),
});
