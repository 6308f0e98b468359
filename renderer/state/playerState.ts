import { create } from 'zustand';

type PlayerState = {
  readonly playing: boolean;
  readonly speed: number;
  readonly loopsRep: boolean;
  /** Why the clip can't be shown; '' when it can. */
  readonly trouble: string;
};

/** The player's switches; what it shows at this moment is in `playhead`. */
export const playerState = create<PlayerState>()(() => ({ playing: false, speed: 1, loopsRep: false, trouble: '' }));
