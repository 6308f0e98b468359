import { randomUUID } from 'node:crypto';
import { rm } from 'node:fs/promises';
import path from 'node:path';
import { readPictureColours } from '../../../media/probe/pictureColours.ts';
import { makeSoundtrack } from '../../../media/read/soundtrack.ts';
import type { MediaTools } from '../../../media/tools/mediaTools.ts';
import { encodeVideo } from '../../../media/write/encodeVideo.ts';
import { openOverlay } from '../overlay/overlay.ts';
import {
  type ClipToShow,
  evenSizeWithin,
  framesOf,
  type PictureNote,
  type PictureWords,
  sizeSeenOf,
  wordsOfNote,
} from '../picture.ts';
import { type CardWords, paintCard } from './card.ts';
import { composedFrames, outputRate } from './composedFrames.ts';
import { type AtNotes, layOut, pictureUsAt, type Shot, shotsOf, soundPieces } from './timeline.ts';

export type AnnotatedClipOptions = {
  readonly notes: readonly PictureNote[];
  readonly words: PictureWords;
  /** A freeze of 1.5 s where nothing is said. */
  readonly atNotes?: AtNotes;
  /** The card in front, for two seconds; null = none. */
  readonly card: CardWords | null;
  readonly sound: 'kept' | 'dropped';
  /** 1920 where nothing is said. */
  readonly longestSidePx?: number;
  /** Called with the share done, 0-1. */
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal | undefined;
};

const cardS = 2;
const usualFreeze: AtNotes = { do: 'freeze', lastsS: 1.5 };

/**
 * Writes a clip with everything drawn into it as an MP4 that phones play, without metadata; whole or not at all. Gives
 * its pictures, one for each of its frames. Throws `cancelled`, `disk`, or `bad-media`.
 */
export async function renderAnnotatedClip(
  tools: MediaTools,
  clip: ClipToShow,
  output: string,
  options: AnnotatedClipOptions,
): Promise<readonly Shot[]> {
  const { notes, words, atNotes = usualFreeze, card, longestSidePx = 1920, onProgress, signal } = options;
  const size = evenSizeWithin(sizeSeenOf(clip), longestSidePx);
  const colours = await readPictureColours(tools, clip.file, signal);
  const said = [...notes.flatMap(wordsOfNote), ...(card === null ? [] : [card.heading, ...card.lines])];
  const overlay = await openOverlay(clip, { size, colours, words, said });
  const rate = outputRate(clip.table);
  const { firstFrame, lastFrame } = framesOf(clip);
  const timeline = layOut({
    ...{ table: clip.table, firstFrame, lastFrame, notes, atNotes },
    ...{ cardS: card === null ? 0 : cardS, speed: 1, pictureUs: pictureUsAt(rate) },
  });
  const frames = composedFrames(tools, clip, {
    ...{ timeline, rate, size, overlay, onProgress, signal },
    card: card && paintCard(overlay.painter, card),
  });
  const soundtrack =
    options.sound === 'kept' && clip.hasSound ? path.join(tools.temporary, `rackside-sound-${randomUUID()}`) : null;
  try {
    if (soundtrack !== null) {
      const pieces = soundPieces(timeline);
      await makeSoundtrack(tools, clip.file, soundtrack, { table: clip.table, pieces, signal });
    }
    await encodeVideo(tools, output, { size, rate, colours, frames, quality: 'good', soundtrack, signal });
  } finally {
    if (soundtrack !== null) await rm(soundtrack, { force: true });
  }
  return [...shotsOf(timeline, rate)];
}
