import { create } from 'zustand';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { read } from '../bridge/read.ts';

type CatalogueState = {
  readonly catalogue: Catalogue | null;
  readonly load: () => Promise<Catalogue | null>;
};

/** Rubric, exercises and cautions: read once, they don't change while the window is open. */
export const catalogueState = create<CatalogueState>()((set, get) => ({
  catalogue: null,
  load: async () => {
    const known = get().catalogue;
    if (known !== null) return known;
    const catalogue = await read('catalogue.get', {});
    if (catalogue !== null) set({ catalogue });
    return catalogue;
  },
}));
