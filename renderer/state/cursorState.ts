import { create } from 'zustand';

/** A column of the scorecard: one rep of a clip, or the clip's whole set. */
export type Column = { readonly clipId: string; readonly rep: number | 'set' };

export type CursorState = {
  readonly criterion: string | null;
  readonly column: Column | null;
  /** The selected flag; null = the newest of the cell. */
  readonly flagId: string | null;
  /** The flag whose fault is being picked. */
  readonly namingFlagId: string | null;
  /** Reps chosen to be marked together with the one the cursor is on; of the cursor's clip. */
  readonly chosenReps: readonly number[];
  readonly chooseReps: (reps: readonly number[]) => void;
  readonly moveTo: (criterion: string, column: Column) => void;
  readonly followRep: (column: Column) => void;
  readonly chooseFlag: (flagId: string | null) => void;
  readonly nameFault: (flagId: string | null) => void;
  readonly reset: () => void;
};

/** Chosen reps are of one clip: going to another lets go of them. */
const staying = ({ column, chosenReps }: Pick<CursorState, 'column' | 'chosenReps'>, to: Column) => ({
  chosenReps: column?.clipId === to.clipId ? chosenReps : [],
});

/** Where the coach is on the scorecard. */
export const cursorState = create<CursorState>()((set) => ({
  criterion: null,
  column: null,
  flagId: null,
  namingFlagId: null,
  chosenReps: [],
  chooseReps: (chosenReps) => set({ chosenReps }),
  moveTo: (criterion, column) => set((state) => ({ criterion, column, flagId: null, ...staying(state, column) })),
  followRep: (column) => set((state) => ({ column, flagId: null, ...staying(state, column) })),
  chooseFlag: (flagId) => set({ flagId }),
  nameFault: (namingFlagId) => set({ namingFlagId }),
  reset: () => set({ criterion: null, column: null, flagId: null, namingFlagId: null, chosenReps: [] }),
}));
