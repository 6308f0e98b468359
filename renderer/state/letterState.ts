import { create } from 'zustand';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';

export type Letter = Result<'letters.get'>;

type LetterState = {
  /** Session whose letter this is. */
  readonly sessionId: string | null;
  readonly letter: Letter | null;
  readonly refresh: (sessionId: string) => Promise<void>;
};

let asked = 0;

/** The letter of the session on screen as it is edited: style, lines, letters that were sent. */
export const letterState = create<LetterState>()((set) => ({
  sessionId: null,
  letter: null,
  refresh: async (sessionId) => {
    asked += 1;
    const question = asked;
    const letter = await read('letters.get', { sessionId });
    if (letter !== null && question === asked) set({ sessionId, letter });
  },
}));

/** The letter of a session; null until it is there. */
export const useLetter = (sessionId: string): Letter | null =>
  letterState((state) => (state.sessionId === sessionId ? state.letter : null));
