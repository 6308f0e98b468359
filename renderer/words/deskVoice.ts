import { create } from 'zustand';
import type { Review } from '../../engine/review/review.ts';

type Voice = Review['voice'];

type DeskVoice = { readonly voice: Voice; readonly choose: (voice: Voice) => void };

/** Who the desk speaks to: a coach about trainees, or somebody who reviews their own sets, then in the first person. */
export const deskVoice = create<DeskVoice>()((set) => ({
  voice: 'coach',
  choose: (voice) => set({ voice }),
}));
