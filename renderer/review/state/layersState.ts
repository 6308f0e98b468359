import { create } from 'zustand';

/** What measuring draws over the picture and along the strip. */
export const layers = ['path', 'disc', 'joints', 'curves'] as const;
export type Layer = (typeof layers)[number];

const place = 'rackside.layers.hidden';

const isLayer = (word: string): word is Layer => layers.some((layer) => layer === word);

const readHidden = (): readonly Layer[] => (localStorage.getItem(place) ?? '').split(',').filter(isLayer);

type LayersState = { readonly hidden: readonly Layer[]; readonly toggle: (layer: Layer) => void };

/** The layers that a person has switched off; kept in the window's profile. */
export const layersState = create<LayersState>()((set, get) => ({
  hidden: readHidden(),
  toggle: (layer) => {
    const { hidden } = get();
    const next = hidden.includes(layer) ? hidden.filter((one) => one !== layer) : [...hidden, layer];
    localStorage.setItem(place, next.join(','));
    set({ hidden: next });
  },
}));

/** Whether a layer shows now. */
export const useLayer = (layer: Layer): boolean => layersState((state) => !state.hidden.includes(layer));
