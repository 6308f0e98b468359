import { create } from 'zustand';

/** What stands beside the picture: the scorecard with its flags, or what was measured. */
export type ReviewPanel = 'card' | 'measures';

type PanelState = { readonly panel: ReviewPanel; readonly show: (panel: ReviewPanel) => void };

export const panelState = create<PanelState>()((set) => ({
  panel: 'card',
  show: (panel) => set({ panel }),
}));
