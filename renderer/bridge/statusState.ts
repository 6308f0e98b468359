import { create } from 'zustand';

export type Saving = 'idle' | 'saving' | 'saved' | 'failed';

type StatusState = {
  readonly saving: Saving;
  readonly openSaves: number;
  /** The sentence to show until it is dismissed; '' when there is none. */
  readonly notice: string;
  /** Whether the notice says why a command can't run; it goes when the next command runs. */
  readonly refused: boolean;
  readonly tell: (sentence: string) => void;
  /** Says why a command can't run now. */
  readonly refuse: (sentence: string) => void;
  readonly forgetRefusal: () => void;
  readonly dismiss: () => void;
  readonly saveBegan: () => void;
  readonly saveEnded: (how: 'saved' | 'failed') => void;
};

/** What the status line says. */
export const statusState = create<StatusState>()((set) => ({
  saving: 'idle',
  openSaves: 0,
  notice: '',
  refused: false,
  tell: (notice) => set({ notice, refused: false }),
  refuse: (notice) => set({ notice, refused: true }),
  forgetRefusal: () => set((state) => (state.refused ? { notice: '', refused: false } : state)),
  dismiss: () => set({ notice: '', refused: false }),
  saveBegan: () => set((state) => ({ openSaves: state.openSaves + 1, saving: 'saving' })),
  saveEnded: (how) =>
    set((state) => {
      const openSaves = Math.max(0, state.openSaves - 1);
      return { openSaves, saving: openSaves > 0 ? 'saving' : how };
    }),
}));
