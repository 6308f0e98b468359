import type { ClipCover } from '../../../../engine/covers/cover.ts';
import type { Edition } from '../../../../engine/edition/edition.ts';
import type { JointRecording } from '../../../../engine/recording/recording.ts';
import type { ClipFacts } from '../../../../engine/review/review.ts';
import type { ClipToShow } from '../render/picture.ts';

/** How far a part of the work is: `share` 0-1. */
export type HandoverWork = {
  readonly signal: AbortSignal;
  readonly report: (share: number, message: string) => void;
};

/** A clip whose footage is at hand; nothing is covered yet. */
export type OpenedClip = {
  readonly clip: ClipToShow;
  readonly facts: ClipFacts;
  /** Raw joints, for what follows the head; null where they were not measured. */
  readonly joints: JointRecording | null;
  /** What was covered on it for good: nothing of it leaves without. */
  readonly covered: readonly ClipCover[];
};

/** A session to hand over, from a library or from a review file. */
export type HandoverSource = {
  /** With what was measured already, also of clips whose footage is gone. */
  readonly edition: Edition;
  /** Throws a problem that says why there is nothing to show of a clip. */
  readonly openClip: (clipId: string, work: HandoverWork) => Promise<OpenedClip>;
};
