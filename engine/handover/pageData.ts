import type { FrameTable } from '../time/frameTable.ts';
import type { LoadPath, PathPoint } from './loadPath.ts';

/** A stretch of the clip with what it is called, in media seconds. */
export type Stretch = { readonly fromS: number; readonly toS: number; readonly text: string };

/** The near side in one frame, short: joints in the order of `nearSideJoints`, degrees in that of `nearSideAngles`. */
export type BodyOfFrame = { readonly joints: readonly PathPoint[]; readonly deg: readonly (number | null)[] };

/** What the start page's script knows of a clip. */
export type ClipData = {
  /** Id of the clip's section in the page. */
  readonly id: string;
  readonly table: FrameTable;
  /** Start of each note's frame and where to seek to, by the note's index in the list. */
  readonly notes: readonly { readonly atS: number; readonly seekS: number }[];
  readonly cues: readonly Stretch[];
  readonly reps: readonly Stretch[];
  readonly loadPath: LoadPath | null;
  readonly body: readonly (BodyOfFrame | null)[] | null;
};

/** What the start page's script says itself. */
export type PageWords = {
  /** BCP 47 tag for numbers. */
  readonly locale: string;
  readonly play: string;
  readonly pause: string;
  /** In the order of `nearSideAngles`. */
  readonly angles: readonly string[];
  readonly cues: string;
  readonly reps: string;
};

/** The JSON in the page's element `data`. */
export type PageData = { readonly clips: readonly ClipData[]; readonly words: PageWords };

/** The start page's script and its SHA-256 in base64: the page's content policy lets this script run and no other. */
export type PageScript = { readonly text: string; readonly sha256: string };
