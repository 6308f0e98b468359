import { create } from 'zustand';

export type Saving = 'idle' | 'saving' | 'saved' | 'failed';

type StatusState = {
  readonly saving: Saving;
  readonly openSaves: number;
  /** The sentence to show until it is dismissed; '' when there is none. */
  readonly notice: string;
  readonly tell: (sentence: string) => void;
  readonly dismiss: () => void;
  readonly saveBegan: () => void;
  readonly saveEnded: (how: 'saved' | 'failed') => void;
};

/** What the status line says. */
export const statusState = create<StatusState>()((set) => ({
  saving: 'idle',
  openSaves: 0,
  notice: '',
  tell: (notice) => set({ notice }),
  dismiss: () => set({ notice: '' }),
  saveBegan: () => set((state) => ({ openSaves: state.openSaves + 1, saving: 'saving' })),
  saveEnded: (how) =>
    set((state) => {
      const openSaves = Math.max(0, state.openSaves - 1);
      return { openSaves, saving: openSaves > 0 ? 'saving' : how };
    }),
}));
