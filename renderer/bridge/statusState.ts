import { create } from 'zustand';

export type Saving = 'idle' | 'saving' | 'saved' | 'failed';

/** A button beside what an act did, which takes it back. */
export type Offer = { readonly doing: string; readonly run: () => void };

type StatusState = {
  readonly saving: Saving;
  readonly openSaves: number;
  /** The sentence to show until it is dismissed; '' when there is none. */
  readonly notice: string;
  /** Whether the notice says why a command can't run; it goes when the next command runs. */
  readonly refused: boolean;
  /** What the last act did, until the next command runs; '' when there is nothing to say. */
  readonly done: string;
  /** What is typed and waits for its field; '' when nothing does. */
  readonly held: string;
  /** Takes back what the last act did, as long as it is the last. */
  readonly offer: Offer | null;
  readonly tell: (sentence: string) => void;
  /** Says what an act did. */
  readonly say: (sentence: string, offer?: Offer) => void;
  readonly hold: (sentence: string) => void;
  /** Says why a command can't run now. */
  readonly refuse: (sentence: string) => void;
  /** Takes back what was said of the command before. */
  readonly forgetLast: () => void;
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
  done: '',
  held: '',
  tell: (notice) => set({ notice, refused: false }),
  offer: null,
  say: (done, offer) => set({ done, offer: offer ?? null }),
  hold: (held) => set({ held }),
  refuse: (notice) => set({ notice, refused: true, done: '', offer: null }),
  forgetLast: () => set(({ refused }) => ({ done: '', offer: null, ...(refused && { notice: '', refused: false }) })),
  dismiss: () => set({ notice: '', refused: false }),
  saveBegan: () => set((state) => ({ openSaves: state.openSaves + 1, saving: 'saving', offer: null })),
  saveEnded: (how) =>
    set((state) => {
      const openSaves = Math.max(0, state.openSaves - 1);
      return { openSaves, saving: openSaves > 0 ? 'saving' : how };
    }),
}));
