import type { Undelivered } from '../contract/handover.ts';

/** One session as it was handed over, or why it was not. */
export type HandedLine = {
  /** Null for a review file. */
  readonly sessionId: string | null;
  readonly path: string | null;
  readonly version: number | null;
  readonly failed: readonly Undelivered[];
  /** Why all of it failed; '' when it did not. */
  readonly problem: string;
};
