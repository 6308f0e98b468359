import { create } from 'zustand';
import { keepInProfile, readProfile } from '../../base/profile.ts';

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
