import { create } from 'zustand';

export type Saving = 'idle' | 'saving' | 'saved' | 'failed';

/** A button beside what an act did, which takes it back. */
export type Offer = { readonly doing: string; readonly run: () => void };

type StatusState = {
  readonly saving: Saving;
  readonly openSaves: number;
  /** The sentence to show until it is dismissed; '' when there is none. */
  readonly notice: string;
  /**
   * What the notice is about, which tells when it holds no more: why a command can't run goes with the next command, why
   * something wasn't saved once something was, why something wasn't read once something was; news stay.
   */
  readonly about: 'news' | 'refusal' | 'save' | 'read';
  /** What the last act did, until the next command runs; '' when there is nothing to say. */
  readonly done: string;
  /** What is typed and waits for its field; '' when nothing does. */
  readonly held: string;
  /** Takes back what the last act did, as long as it is the last. */
  readonly offer: Offer | null;
  readonly tell: (sentence: string, about?: 'news' | 'save' | 'read') => void;
  /** Says what an act did. */
  readonly say: (sentence: string, offer?: Offer) => void;
  readonly hold: (sentence: string) => void;
  /** Says why a command can't run now. */
  readonly refuse: (sentence: string) => void;
  /** Takes back what was said of the command before. */
  readonly forgetLast: () => void;
  readonly dismiss: () => void;
  /** Something was read. */
  readonly readWell: () => void;
  /** Another screen is on: what was refused on the one before concerns nobody any more. */
  readonly leaveScreen: () => void;
  readonly saveBegan: () => void;
  readonly saveEnded: (how: 'saved' | 'failed') => void;
};

const nothing = { notice: '', about: 'news' } as const;

/** What the status line says. */
export const statusState = create<StatusState>()((set) => ({
  saving: 'idle',
  openSaves: 0,
  notice: '',
  about: 'news',
  done: '',
  held: '',
  offer: null,
  tell: (notice, about = 'news') => set({ notice, about }),
  say: (done, offer) => set({ done, offer: offer ?? null }),
  hold: (held) => set({ held }),
  refuse: (notice) => set({ notice, about: 'refusal', done: '', offer: null }),
  forgetLast: () => set(({ about }) => ({ done: '', offer: null, ...(about === 'refusal' && nothing) })),
  dismiss: () => set(nothing),
  readWell: () => set((state) => (state.about === 'read' ? nothing : state)),
  leaveScreen: () =>
    set(({ about, saving }) => ({
      ...(about !== 'news' && nothing),
      ...(saving === 'failed' && { saving: 'idle' }),
    })),
  saveBegan: () => set((state) => ({ openSaves: state.openSaves + 1, saving: 'saving', offer: null })),
  saveEnded: (how) =>
    set((state) => {
      const openSaves = Math.max(0, state.openSaves - 1);
      return {
        openSaves,
        saving: openSaves > 0 ? 'saving' : how,
        ...(how === 'saved' && state.about === 'save' && nothing),
      };
    }),
}));
