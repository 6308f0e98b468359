import type { FileInFolder } from '../../../../engine/handover/handoverFolder.ts';
import type { Still } from '../../../../engine/letter/style.ts';
import type { Undelivered } from '../../../contract/handover.ts';
import type { FootageCopy } from './playedReview.ts';

/** A still that lies in the folder; its source is its name there. */
export type StillFile = Still & { readonly jpeg: Uint8Array };

/** What was written of one clip. */
export type WrittenClip = {
  readonly files: readonly FileInFolder[];
  /** By the flag's id. */
  readonly stills: ReadonlyMap<string, StillFile>;
  /** With times of its own. */
  readonly annotated: FootageCopy | null;
  /** The footage itself, where it was asked for. */
  readonly original: FootageCopy | null;
  readonly failed: readonly Undelivered[];
};
