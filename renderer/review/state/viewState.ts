import { create } from 'zustand';
import { keepInProfile, readProfile } from '../../base/profile.ts';
import { fit, type Point, panBy, type Size, type Zoom, zoomAt } from '../model/pictureGeometry.ts';
import { follow, panWindow, type StripWindow, wholeClip, zoomWindow } from '../model/stripWindow.ts';

type StripState = {
  readonly window: StripWindow;
  /** What can be shown: the clip's section. */
  readonly bounds: StripWindow;
  /** Shows other bounds, all of them. */
  readonly showWithin: (bounds: StripWindow) => void;
  /** About a position along the strip, 0-1; about its middle without one. */
  readonly zoom: (factor: number, position?: number) => void;
  readonly pan: (by: number) => void;
  readonly follow: (share: number) => void;
  readonly showAll: () => void;
};

/** The part of the clip that the strip shows. */
export const stripState = create<StripState>()((set) => ({
  window: wholeClip,
  bounds: wholeClip,
  showWithin: (bounds) => set({ bounds, window: bounds }),
  zoom: (factor, position = 0.5) =>
    set(({ window, bounds }) => ({ window: zoomWindow(window, position, factor, bounds) })),
  pan: (by) => set(({ window, bounds }) => ({ window: panWindow(window, by, bounds) })),
  follow: (share) => set(({ window, bounds }) => ({ window: follow(window, share, bounds) })),
  showAll: () => set(({ bounds }) => ({ window: bounds })),
}));

type ZoomState = {
  readonly zoom: Zoom;
  readonly stage: Size;
  readonly setStage: (stage: Size) => void;
  /** At a point of the stage; in its middle without one. */
  readonly zoomBy: (factor: number, at?: Point) => void;
  readonly pan: (by: Point) => void;
  readonly fit: () => void;
};

/** Zoom of the picture on the stage, and where it lies; it stays from clip to clip, so that the same spot can be compared. */
export const zoomState = create<ZoomState>()((set) => ({
  zoom: fit,
  stage: { width: 0, height: 0 },
  setStage: (stage) => set(({ zoom }) => ({ stage, zoom: panBy(zoom, { x: 0, y: 0 }, stage) })),
  zoomBy: (factor, at) =>
    set(({ zoom, stage }) => ({
      zoom: zoomAt(zoom, at ?? { x: stage.width / 2, y: stage.height / 2 }, factor, stage),
    })),
  pan: (by) => set(({ zoom, stage }) => ({ zoom: panBy(zoom, by, stage) })),
  fit: () => set({ zoom: fit }),
}));

/** What measuring draws over the picture and along the strip. */
export const layers = ['path', 'disc', 'joints', 'curves'] as const;
export type Layer = (typeof layers)[number];

const storageKey = 'rackside.layers.hidden';

const isLayer = (word: string): word is Layer => layers.some((layer) => layer === word);

const readHidden = (): readonly Layer[] => (readProfile(storageKey) ?? '').split(',').filter(isLayer);

type LayersState = { readonly hidden: readonly Layer[]; readonly toggle: (layer: Layer) => void };

/** The layers that a person has switched off; kept in the window's profile. */
export const layersState = create<LayersState>()((set, get) => ({
  hidden: readHidden(),
  toggle: (layer) => {
    const { hidden } = get();
    const next = hidden.includes(layer) ? hidden.filter((one) => one !== layer) : [...hidden, layer];
    keepInProfile(storageKey, next.join(','));
    set({ hidden: next });
  },
}));

/** Whether a layer shows now. */
export const useLayer = (layer: Layer): boolean => layersState((state) => !state.hidden.includes(layer));
