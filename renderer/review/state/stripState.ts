import { create } from 'zustand';
import { follow, panWindow, type StripWindow, wholeClip, zoomWindow } from '../model/stripWindow.ts';

type StripState = {
  readonly window: StripWindow;
  /** At a place of the strip, 0-1; in its middle without one. */
  readonly zoom: (factor: number, place?: number) => void;
  readonly pan: (by: number) => void;
  readonly follow: (share: number) => void;
  readonly showAll: () => void;
};

/** The part of the clip that the strip shows. */
export const stripState = create<StripState>()((set) => ({
  window: wholeClip,
  zoom: (factor, place = 0.5) => set(({ window }) => ({ window: zoomWindow(window, place, factor) })),
  pan: (by) => set(({ window }) => ({ window: panWindow(window, by) })),
  follow: (share) => set(({ window }) => ({ window: follow(window, share) })),
  showAll: () => set({ window: wholeClip }),
}));
