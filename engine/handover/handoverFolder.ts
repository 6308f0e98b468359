import type { SessionNotices } from '../edition/notices.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { SeenPart } from '../framing/picturePlaces.ts';
import type { FrameRange } from '../framing/section.ts';
import type { LetterPlan } from '../letter/letterPlan.ts';
import type { SetMeasurement } from '../motion/measurement.ts';
import type { CameraPath } from '../recording/recording.ts';
import type { Review } from '../review/review.ts';
import type { FrameTable } from '../time/frameTable.ts';
import type { NearSide } from './nearSide.ts';

/** The start page's script and its SHA-256 in base64: the page's content policy lets this script run and no other. */
export type PageScript = { readonly text: string; readonly sha256: string };

/** A clip that lies in the folder. */
export type ClipInFolder = {
  /** Its name in the folder. */
  readonly file: string;
  /** The name of a picture to show before it plays. */
  readonly poster?: string;
  /** The frames of that file; a copy with other times needs their own table. */
  readonly table: FrameTable;
  /** The clip's clock at each of those frames, in microseconds, where the file has a time of its own. */
  readonly clockUs?: readonly number[] | null;
  /** Size of the picture. */
  readonly shown: { readonly width: number; readonly height: number };
  /** Where its frames and its picture lie in the footage, of which the rest tells; without it they are the footage's. */
  readonly from?: { readonly footage: FrameTable; readonly range: FrameRange; readonly part: SeenPart };
  readonly measurement: SetMeasurement | null;
  /** How the camera moved, where that was taken out of the measures; null = it stood still. */
  readonly camera: CameraPath | null;
  /** The near side in each frame; null = no lines, no angles. */
  readonly body: ((frame: number) => NearSide | null) | null;
};

export const fileKinds = [
  'letter',
  'sheet',
  'breakdown',
  'filmingCard',
  'notes',
  'chapters',
  'data',
  'measures',
  'annotatedClip',
  'narratedClip',
  'loop',
  'calendar',
  'other',
] as const;
export type FileKind = (typeof fileKinds)[number];

/** A file of the folder that the page links to. */
export type FileInFolder = {
  /** Its name in the folder, with `/` between folder and file. */
  readonly name: string;
  readonly kind: FileKind;
  /** What tells it from others of its kind. */
  readonly about?: string;
  /** The clip it belongs to; without one it belongs to the session. */
  readonly clipId?: string;
};

/** Everything the page is written from. */
export type HandoverFolder = {
  /** With names as the trainee wants them. */
  readonly review: Review;
  readonly catalogue: Catalogue;
  /** What the letter says: the page opens with its grade and its first cue. */
  readonly plan: LetterPlan;
  /** By the clip's id in the review; a clip that isn't among them has its notes on the page, but nothing to play. */
  readonly clips: ReadonlyMap<string, ClipInFolder>;
  readonly files: readonly FileInFolder[];
  /** What stands on top of the page and at its end, as on every document of the session. */
  readonly notices: SessionNotices;
  readonly script: PageScript;
  /** Style rules of the faces that the page is set in, their files inside; '' for the reader's own. */
  readonly faces: string;
};
