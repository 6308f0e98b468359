import type { Cover } from '../../../../engine/covers/cover.ts';
import { asFilmed, type Framing } from '../../../../engine/framing/framing.ts';
import { type SeenPart, seenPart, seenSize } from '../../../../engine/framing/picturePlaces.ts';
import { type FrameRange, framesShown } from '../../../../engine/framing/section.ts';
import type { NearSide } from '../../../../engine/handover/nearSide.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { CameraPath } from '../../../../engine/recording/recording.ts';
import type { Drawing } from '../../../../engine/review/drawings/drawing.ts';
import type { Severity } from '../../../../engine/rubric/rubric.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { PictureSize, UprightPicture } from '../../media/probe/streams.ts';

/** A clip with everything that can be drawn over it. Places are pixels of the upright picture. */
export type ClipToShow = {
  readonly file: string;
  readonly table: FrameTable;
  /** The upright picture. */
  readonly shown: UprightPicture;
  /** What is seen of it; all of it, as filmed, without. */
  readonly framing?: Framing;
  /** The frames of its section; all of them without. */
  readonly range?: FrameRange;
  readonly hasSound: boolean;
  readonly measurement: SetMeasurement | null;
  /** How the camera moved, where that was taken out of the measures; null = it stood still. */
  readonly camera: CameraPath | null;
  /** The lifter's near side in each frame (`nearSideReader`); null = no lines, no angles. */
  readonly body: ((frame: number) => NearSide | null) | null;
  readonly drawings: readonly Drawing[];
  readonly covers: readonly Cover[];
};

/** The part of a clip's upright picture that is seen. */
export const partSeenOf = ({ shown, framing = asFilmed }: ClipToShow): SeenPart => seenPart(shown, framing);

/** The size of what is seen of a clip. */
export const sizeSeenOf = (clip: ClipToShow): PictureSize => seenSize(partSeenOf(clip));

/** The frames that a clip shows. */
export const framesOf = ({ range, table }: ClipToShow): FrameRange => range ?? framesShown(null, table);

/** A remark as the picture shows it; all words in the reader's language. */
export type PictureNote = {
  /** The frame it was made at. */
  readonly frame: number;
  /** null = a plain note. */
  readonly severity: Severity | null;
  /** The first line, behind the strokes: severity, criterion, rep. */
  readonly heading: string;
  /** What was seen and what to do; may be empty. Words of the other direction begin on a line of their own. */
  readonly words: string;
};

/** Everything that a remark writes into a picture. */
export const wordsOfNote = ({ heading, words }: PictureNote): readonly string[] => [heading, words];

/** What a picture says besides remarks: words beside the angles, and a time as a clock. */
export type PictureWords = {
  readonly knee: string;
  readonly trunk: string;
  /** A time in microseconds as letter and sheet write it. */
  readonly clock: (us: number) => string;
};

/** The largest even size of a shape within a square, never larger than it is. */
export function evenSizeWithin({ width, height }: PictureSize, longestSidePx: number): PictureSize {
  const shrink = Math.min(1, longestSidePx / Math.max(width, height));
  const even = (length: number) => Math.max(2, 2 * Math.floor((length * shrink) / 2 + 1e-6));
  return { width: even(width), height: even(height) };
}
