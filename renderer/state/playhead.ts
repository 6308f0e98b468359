import { createStore } from 'zustand/vanilla';

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
