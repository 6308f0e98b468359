import { nearestFrame, seekTargetUs } from '../../engine/time/frames.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';

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
