import { create } from 'zustand';
import type { SessionSummary } from '../../../electron/contract/desk.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';

/** What a dialog of arranging asks about. */
export type Arranging =
  | { readonly kind: 'none' }
  | { readonly kind: 'renameSession' | 'moveSession' | 'mergeSession'; readonly session: SessionSummary }
  | { readonly kind: 'renameClip'; readonly clip: Clip }
  | {
      readonly kind: 'moveClip' | 'clipExercise';
      readonly clip: Clip;
      readonly entry: Entry;
      readonly sessionId: string;
    }
  | { readonly kind: 'moveEntry'; readonly entry: Entry; readonly sessionId: string }
  | { readonly kind: 'parked'; readonly sessionId: string };

type ArrangingState = {
  readonly open: Arranging;
  /** The session whose row on the desk had the focus last: what keys and palette speak of there. */
  readonly rowId: string | null;
  readonly ask: (open: Arranging) => void;
  readonly close: () => void;
  readonly atRow: (sessionId: string) => void;
};

/** Which dialog of arranging is open. */
export const arrangingState = create<ArrangingState>()((set) => ({
  open: { kind: 'none' },
  rowId: null,
  ask: (open) => set({ open }),
  close: () => set({ open: { kind: 'none' } }),
  atRow: (rowId) => set({ rowId }),
}));
