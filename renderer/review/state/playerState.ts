import { create } from 'zustand';
import type { Loop } from '../../player/player.ts';

/** Frames of a clip marked to be looked at over and over. */
export type MarkedRange = Loop & { readonly clipId: string };

export type PlayerState = {
  readonly playing: 'no' | 'forwards' | 'backwards';
  readonly speed: number;
  readonly loops: 'nothing' | 'rep' | 'range';
  readonly range: MarkedRange | null;
  /** The rep before is shown over the picture at the same phase. */
  readonly ghost: 'shown' | 'hidden';
  /** Why the clip can't be shown; '' when it can. */
  readonly trouble: string;
};

/** The player's switches; what it shows at this moment is in `playhead`. */
export const playerState = create<PlayerState>()(() => ({
  playing: 'no',
  speed: 1,
  loops: 'nothing',
  range: null,
  ghost: 'hidden',
  trouble: '',
}));
