import { useEffect, useRef } from 'react';
import { create } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Loop } from '../../player/player.ts';

/**
 * What the picture shows now. Kept outside React: readers subscribe and write to the page themselves, so that
 * sixty changes a second render nothing.
 */
export type Playhead = {
  readonly clipId: string | null;
  readonly frame: number;
  /** False while a seek is under way; the frame above is the one still on screen. */
  readonly settled: boolean;
  /** Who shows the frame: the video, or a decoded frame on the canvas over it. */
  readonly picture: 'video' | 'canvas';
};

export const playhead = createStore<Playhead>()(() => ({
  clipId: null,
  frame: 0,
  settled: false,
  picture: 'video',
}));

/**
 * Writes to the page whenever the playhead moves, at most once a screen refresh and outside React's rendering.
 * `write` may close over anything; the newest one is used.
 */
export function usePlayhead(write: (now: Playhead) => void): void {
  const newest = useRef(write);
  newest.current = write;
  useEffect(() => {
    newest.current(playhead.getState());
    let asked = 0;
    const stop = playhead.subscribe(() => {
      if (asked !== 0) return;
      asked = requestAnimationFrame(() => {
        asked = 0;
        newest.current(playhead.getState());
      });
    });
    return () => {
      stop();
      cancelAnimationFrame(asked);
    };
  }, []);
  useEffect(() => {
    newest.current(playhead.getState());
  });
}

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
