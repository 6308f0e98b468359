import type { SeedLibrary } from '../harness/seedLibrary.ts';

/** What the worker has to do, and where. */
export type WorkOrder = Pick<SeedLibrary, 'sessionId' | 'clipId' | 'emptySessionId' | 'emptyEntryId' | 'film'> & {
  readonly library: string;
  /** The folder that is handed over to. */
  readonly out: string;
  /** The file that what was acknowledged is written into. */
  readonly notebook: string;
  readonly acts: number;
};

/** One thing that the app said was done. */
export type Acknowledged =
  | { readonly kind: 'flag'; readonly note: string }
  | { readonly kind: 'notes'; readonly notes: string }
  | { readonly kind: 'import' | 'handover' };
