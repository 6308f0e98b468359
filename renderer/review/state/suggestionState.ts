import { create } from 'zustand';
import type { Weight } from '../../../engine/rubric/rubric.ts';

type SuggestionState = {
  /** The selected suggestion; null = the first. */
  readonly chosenId: string | null;
  /** What the coach changes of it before it becomes a flag; null = as proposed. */
  readonly weight: Weight | null;
  readonly reps: readonly number[] | null;
  readonly choose: (id: string | null) => void;
};

/** The selected suggestion, and what the coach changed of it. */
export const suggestionState = create<SuggestionState>()((set) => ({
  chosenId: null,
  weight: null,
  reps: null,
  choose: (chosenId) => set((state) => (state.chosenId === chosenId ? state : { chosenId, weight: null, reps: null })),
}));
