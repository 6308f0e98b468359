import { create } from 'zustand';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';

export type Letter = Result<'letters.get'>;

type LetterState = {
  readonly letter: Letter | null;
  readonly refresh: (sessionId: string) => Promise<void>;
};

/** The letter of the session on screen as it is edited: style, lines, letters that were sent. */
export const letterState = create<LetterState>()((set) => ({
  letter: null,
  refresh: async (sessionId) => {
    const letter = await read('letters.get', { sessionId });
    if (letter !== null) set({ letter });
  },
}));
