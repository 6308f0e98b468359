import { create } from 'zustand';

/** A column of the scorecard: one rep of a clip, or the clip's whole set. */
export type Column = { readonly clipId: string; readonly rep: number | 'set' };

type CursorState = {
  readonly criterion: string | null;
  readonly column: Column | null;
  /** The flag the list and the delete key speak of; null = the newest of the cell. */
  readonly flagId: string | null;
  /** The flag whose fault is being picked. */
  readonly namingFlagId: string | null;
  readonly moveTo: (criterion: string, column: Column) => void;
  readonly followRep: (column: Column) => void;
  readonly chooseFlag: (flagId: string | null) => void;
  readonly nameFault: (flagId: string | null) => void;
  readonly reset: () => void;
};

/** Where the coach is on the scorecard. */
export const cursorState = create<CursorState>()((set) => ({
  criterion: null,
  column: null,
  flagId: null,
  namingFlagId: null,
  moveTo: (criterion, column) => set({ criterion, column, flagId: null }),
  followRep: (column) => set({ column, flagId: null }),
  chooseFlag: (flagId) => set({ flagId }),
  nameFault: (namingFlagId) => set({ namingFlagId }),
  reset: () => set({ criterion: null, column: null, flagId: null, namingFlagId: null }),
}));
