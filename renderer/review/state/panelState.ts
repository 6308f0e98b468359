import { create } from 'zustand';
import type { Severity } from '../../../engine/rubric/rubric.ts';
import { stopFraming } from './framingState.ts';
import { stopCovering, stopSettingUp } from './pictureTools.ts';

/** What stands beside the picture: the scorecard with its flags, or what was measured. */
export type ReviewPanel = 'card' | 'measures';

type PanelState = { readonly panel: ReviewPanel; readonly show: (panel: ReviewPanel) => void };

export const panelState = create<PanelState>()((set) => ({
  panel: 'card',
  show: (panel) => set({ panel }),
}));

/** Whether the menu beside the picture's controls is open. */
export const menuState = create<{ readonly open: boolean }>()(() => ({ open: false }));

/** Closes what replaces the card and the measures: the set-up, or the covers. */
export function clearBeside(): void {
  stopSettingUp();
  stopCovering();
  stopFraming();
}

/** The flag that is to be copied, while it is asked where to. */
export const copyState = create<{ readonly flagId: string | null }>()(() => ({ flagId: null }));

type SuggestionState = {
  /** The selected suggestion; null = the first. */
  readonly chosenId: string | null;
  /** What the coach changes of it before it becomes a flag; null = as proposed. */
  readonly severity: Severity | null;
  readonly reps: readonly number[] | null;
  readonly choose: (id: string | null) => void;
};

/** The selected suggestion, and what the coach changed of it. */
export const suggestionState = create<SuggestionState>()((set) => ({
  chosenId: null,
  severity: null,
  reps: null,
  choose: (chosenId) =>
    set((state) => (state.chosenId === chosenId ? state : { chosenId, severity: null, reps: null })),
}));
