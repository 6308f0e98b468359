import { create } from 'zustand';

export type Screen =
  | { readonly kind: 'desk' }
  | { readonly kind: 'review'; readonly sessionId: string }
  | { readonly kind: 'letter'; readonly sessionId: string };

type ScreenState = { readonly screen: Screen; readonly go: (screen: Screen) => void };

/** Which screen is on. */
export const screenState = create<ScreenState>()((set) => ({
  screen: { kind: 'desk' },
  go: (screen) => set({ screen }),
}));
