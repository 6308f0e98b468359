import { create } from 'zustand';
import { statusState } from '../bridge/statusState.ts';

export type Screen =
  | { readonly kind: 'desk' }
  /** What came in and belongs to no session yet. */
  | { readonly kind: 'inbox' }
  | { readonly kind: 'review'; readonly sessionId: string }
  | { readonly kind: 'letter'; readonly sessionId: string }
  /** Which sessions are chosen to be handed over; null = those that are due. `from`: the session whose letter led here. */
  | { readonly kind: 'handover'; readonly sessionIds: readonly string[] | null; readonly from: string | null }
  | { readonly kind: 'trainees' }
  | { readonly kind: 'bin' }
  | { readonly kind: 'trainee'; readonly traineeId: string }
  /** A clip beside another of the same exercise. */
  | { readonly kind: 'compare'; readonly sessionId: string; readonly clipId: string; readonly rep: number | null }
  /** Which two judgements to lay side by side: a session and its second look, or any two chosen on the screen. */
  | { readonly kind: 'agreement'; readonly firstId: string | null; readonly secondId: string | null };

type ScreenState = { readonly screen: Screen; readonly go: (screen: Screen) => void };

/** Which screen is on. */
export const screenState = create<ScreenState>()((set) => ({
  screen: { kind: 'desk' },
  go: (screen) => {
    set({ screen });
    statusState.getState().leaveScreen();
  },
}));

/** Goes from a session to where it is handed over. */
export const goToHandover = (sessionId: string): void =>
  screenState.getState().go({ kind: 'handover', sessionIds: [sessionId], from: sessionId });
