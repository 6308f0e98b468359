import { create } from 'zustand';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { read } from '../bridge/read.ts';

type CatalogueState = {
  /** The judging data on screen: of the session under review, or else the newest. */
  readonly catalogue: Catalogue | null;
  /** The rubric versions there are, ascending. */
  readonly rubricVersions: readonly number[];
  /** Reads the judging data of a rubric version, of the newest without one, and gives it; shows nothing. */
  readonly fetch: (version?: number) => Promise<Catalogue | null>;
  readonly show: (catalogue: Catalogue) => void;
  /** Reads the newest and shows it. */
  readonly load: () => Promise<void>;
};

/** Rubric, exercises and cautions: each version is read once, they don't change while the window is open. */
export const catalogueState = create<CatalogueState>()((set, get) => {
  const known = new Map<number | undefined, Catalogue>();
  return {
    catalogue: null,
    rubricVersions: [],
    fetch: async (version) => {
      const kept = known.get(version);
      if (kept !== undefined) return kept;
      const answer = await read('catalogue.get', version === undefined ? {} : { version });
      if (answer === null) return null;
      const { rubricVersions, ...catalogue } = answer;
      known.set(version, catalogue);
      set({ rubricVersions });
      return catalogue;
    },
    show: (catalogue) => set({ catalogue }),
    load: async () => {
      const newest = await get().fetch();
      if (newest !== null) set({ catalogue: newest });
    },
  };
});
