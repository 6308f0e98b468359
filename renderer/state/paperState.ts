import { create } from 'zustand';
import type { Paper } from '../../electron/contract/handover.ts';
import { keepInProfile, readProfile } from '../base/profile.ts';

const storageKey = 'rackside.paper';

type PaperState = { readonly paper: Paper; readonly choose: (paper: Paper) => void };

/** The paper that PDFs are set for; kept in the window's profile. */
export const paperState = create<PaperState>()((set) => ({
  paper: readProfile(storageKey) === 'letter' ? 'letter' : 'a4',
  choose: (paper) => {
    keepInProfile(storageKey, paper);
    set({ paper });
  },
}));
