import { create } from 'zustand';
import type { Paper } from '../../electron/contract/handover.ts';

const place = 'rackside.paper';

type PaperState = { readonly paper: Paper; readonly choose: (paper: Paper) => void };

/** The paper that PDFs are set for; kept in the window's profile. */
export const paperState = create<PaperState>()((set) => ({
  paper: localStorage.getItem(place) === 'letter' ? 'letter' : 'a4',
  choose: (paper) => {
    localStorage.setItem(place, paper);
    set({ paper });
  },
}));
