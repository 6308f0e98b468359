import { create } from 'zustand';
import { keepInProfile, readProfile } from '../../base/profile.ts';
import type { Size } from '../model/pictureGeometry.ts';

/** Each shape of picture has a side of its own width beside the scorecard. */
export type PictureShape = 'landscape' | 'portrait';

/** The shape of an upright picture; landscape while its size isn't known. */
export const shapeOf = ({ width, height }: Size): PictureShape => (height > width ? 'portrait' : 'landscape');

const storageKey = (shape: PictureShape): string => `rackside.picture.${shape}`;

function readShare(shape: PictureShape): number | null {
  const share = Number(readProfile(storageKey(shape)) ?? Number.NaN);
  return share > 0 && share < 1 ? share : null;
}

type LayoutState = {
  /** The share of the window's width that the picture's side was given; null: as wide as the picture gets. */
  readonly shares: Readonly<Record<PictureShape, number | null>>;
  /** The share it has on screen, whatever was asked for. */
  readonly shownShare: number;
  /** Whether the picture has the whole window, but for a slim bar. */
  readonly large: boolean;
  readonly showShare: (share: number) => void;
  readonly setShare: (shape: PictureShape, share: number | null) => void;
  readonly setLarge: (large: boolean) => void;
};

/** How the review divides its window; widths are kept in the window's profile. */
export const layoutState = create<LayoutState>()((set) => ({
  shares: { landscape: readShare('landscape'), portrait: readShare('portrait') },
  shownShare: 0.5,
  large: false,
  showShare: (shownShare) => set((state) => (state.shownShare === shownShare ? state : { shownShare })),
  setShare: (shape, share) =>
    set(({ shares }) => {
      const kept = share === null ? null : Math.min(Math.max(share, 0.05), 0.95);
      keepInProfile(storageKey(shape), kept === null ? '' : String(kept));
      return { shares: { ...shares, [shape]: kept } };
    }),
  setLarge: (large) => set({ large }),
}));
