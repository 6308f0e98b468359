import type { ClipCover } from '../../../../engine/covers/cover.ts';
import type { RacksideDocument } from '../../../../engine/document/document.ts';
import type { Catalogue } from '../../../../engine/exercises/catalogue.ts';
import type { Stills } from '../../../../engine/letter/style.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { NameMode } from '../../../../engine/names/shownName.ts';
import type { JointRecording } from '../../../../engine/recording/recording.ts';
import type { ClipFacts, Review } from '../../../../engine/review/review.ts';
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
  /** With names as the trainee wants them. */
  readonly review: Review;
  readonly names: NameMode;
  /** The judging data in the language of the handover. */
  readonly catalogue: Catalogue;
  /** The trainee's sessions before, oldest first. */
  readonly earlier: readonly Review[];
  readonly letter: (stills: Stills) => RacksideDocument;
  /** What was measured already, by the clip's id; also of clips whose footage is gone. */
  readonly measures: ReadonlyMap<string, SetMeasurement>;
  /** Throws a problem that says why there is nothing to show of a clip. */
  readonly openClip: (clipId: string, work: HandoverWork) => Promise<OpenedClip>;
};
