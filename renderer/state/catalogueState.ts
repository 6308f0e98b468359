import { create } from 'zustand';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { read } from '../bridge/read.ts';
import { deskLanguage } from '../words/deskLanguage.ts';

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
  /** Shows what is on screen in the language that the desk speaks now. */
  readonly speak: () => Promise<void>;
};

/**
 * Rubric, exercises and cautions in the language of the desk: each version is read once in each language, they don't
 * change while the window is open.
 */
export const catalogueState = create<CatalogueState>()((set, get) => {
  const known = new Map<string, Catalogue>();
  return {
    catalogue: null,
    rubricVersions: [],
    fetch: async (version) => {
      const { language } = deskLanguage.getState();
      const key = `${language} ${version ?? ''}`;
      const kept = known.get(key);
      if (kept !== undefined) return kept;
      const answer = await read('catalogue.get', { language, ...(version !== undefined && { version }) });
      if (answer === null) return null;
      const { rubricVersions, ...judging } = answer;
      const catalogue: Catalogue = { ...judging, language };
      known.set(key, catalogue);
      set({ rubricVersions });
      return catalogue;
    },
    show: (catalogue) => set({ catalogue }),
    load: async () => {
      const newest = await get().fetch();
      if (newest !== null) set({ catalogue: newest });
    },
    speak: async () => {
      const shown = get().catalogue;
      const spoken = shown === null ? null : await get().fetch(shown.rubric.version);
      if (spoken !== null) set({ catalogue: spoken });
    },
  };
});
