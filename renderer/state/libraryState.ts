import { create } from 'zustand';
import type { LibraryState as Library } from '../../electron/contract/library.ts';
import { rackside } from '../bridge/rackside.ts';

type LibraryState = {
  /** null until the backend has answered for the first time. */
  readonly library: Library | null;
  readonly refresh: () => Promise<void>;
};

/** Whether there is a library, and whose. */
export const libraryState = create<LibraryState>()((set) => ({
  library: null,
  refresh: async () => {
    const reply = await rackside().ask('library.state', {});
    set({ library: reply.ok ? reply.value : { kind: 'failed', sentence: reply.problem.sentence } });
  },
}));
