import type { SeedLibrary } from '../harness/seedLibrary.ts';

/** Where the work is done, and on what. */
export type StrainOrder = Pick<SeedLibrary, 'sessionId' | 'clipId' | 'emptySessionId' | 'emptyEntryId' | 'film'> & {
  readonly library: string;
  readonly out: string;
  /** The library to be copied. */
  readonly seed: string;
  /** How many pages of the disk are free, one run each; null: the disk is as it is, and one run is made. */
  readonly free: readonly number[] | null;
};

/** What came of one run. */
export type Round = {
  readonly free: number | null;
  readonly acknowledged: number;
  readonly refused: number;
  readonly wrong: readonly string[];
};
