import type { Click } from '../../../engine/recording/setUp.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Problem } from '../../contract/reply.ts';
import type { PictureSize } from '../media/probe/upright.ts';
import type { MediaTools } from '../media/tools/mediaTools.ts';
import type { RecordedParts, RecordingPart } from '../store/recordings.ts';

/** Which footage to look at, and for what. Plain data: it goes to another thread. */
export type RecordingOrder = {
  readonly tools: MediaTools;
  /** Path of the footage. */
  readonly clip: string;
  readonly table: FrameTable;
  /** Size of the upright picture. */
  readonly shown: PictureSize;
  /** Frames in a second of lifting, on average. */
  readonly framesPerSecond: number;
  readonly clicks: readonly Click[];
  readonly wanted: readonly RecordingPart[];
  /** How many threads may look for joints at once. */
  readonly threads: number;
};

export type ToMeasureWorker = { readonly kind: 'cancel' };

export type FromMeasureWorker =
  /** `share`: 0-1. */
  | { readonly kind: 'progress'; readonly share: number; readonly message: string }
  | { readonly kind: 'done'; readonly parts: RecordedParts }
  | { readonly kind: 'failed'; readonly problem: Problem };
