import { create } from 'zustand';
import type { LibraryState as Library } from '../../electron/contract/library.ts';
import { rackside } from '../bridge/rackside.ts';
import { deskVoice } from '../words/deskVoice.ts';

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
    const library: Library = reply.ok ? reply.value : { kind: 'failed', message: reply.problem.message };
    if (library.kind === 'open') deskVoice.getState().choose(library.voice);
    set({ library });
  },
}));
