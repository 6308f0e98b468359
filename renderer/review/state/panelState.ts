import { create } from 'zustand';
import { stopCovering } from './coverState.ts';
import { stopSettingUp } from './setUpState.ts';

/** What stands beside the picture: the scorecard with its flags, or what was measured. */
export type ReviewPanel = 'card' | 'measures';

type PanelState = { readonly panel: ReviewPanel; readonly show: (panel: ReviewPanel) => void };

export const panelState = create<PanelState>()((set) => ({
  panel: 'card',
  show: (panel) => set({ panel }),
}));

/** Closes what replaces the card and the measures: the set-up, or the covers. */
export function clearBeside(): void {
  stopSettingUp();
  stopCovering();
}
