import { readPictureColours } from '../../../media/probe/pictureColours.ts';
import type { PictureSize } from '../../../media/probe/upright.ts';
import { readChosenPictures } from '../../../media/read/readChosenPictures.ts';
import type { MediaTools } from '../../../media/tools/mediaTools.ts';
import { encodeJpegs } from '../../../media/write/encodeJpegs.ts';
import { openOverlay } from '../overlay/overlay.ts';
import { type AngleWords, type ClipToShow, evenSizeWithin, type PictureNote, wordsOfNote } from '../picture.ts';

/** A picture of a remark's frame with everything drawn over it. */
export type Still = { readonly note: PictureNote; readonly size: PictureSize; readonly jpeg: Uint8Array };

export type StillsOptions = {
  readonly words: AngleWords;
  /** 1280 where nothing is said. */
  readonly longestSidePx?: number;
  /** Called with the share done, 0-1. */
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal | undefined;
};

/**
 * The stills of a clip's remarks, in the order of the remarks: JPEG without metadata, upright, an even number of pixels
 * on each side. The clip is decoded once for all of them. Throws `cancelled`, or `bad-media` when a frame can't be decoded.
 */
export async function renderStills(
  tools: MediaTools,
  clip: ClipToShow,
  notes: readonly PictureNote[],
  { words, longestSidePx = 1280, onProgress, signal }: StillsOptions,
): Promise<readonly Still[]> {
  if (notes.length === 0) return [];
  const size = evenSizeWithin(clip.shown, longestSidePx);
  const colours = await readPictureColours(tools, clip.file, signal);
  const overlay = await openOverlay(clip, { size, colours, words, said: notes.flatMap(wordsOfNote) });
  const rising = [...notes].sort((one, other) => one.frame - other.frame);

  async function* finished(): AsyncGenerator<Uint8Array, void, void> {
    const frames = notes.map(({ frame }) => frame);
    let done = 0;
    for await (const { frame, bytes } of readChosenPictures(tools, clip.file, {
      table: clip.table,
      frames,
      size,
      signal,
    })) {
      for (const note of rising.filter((each) => each.frame === frame)) {
        const picture = bytes.slice();
        overlay.finish(picture, { frame, path: 'whole', note });
        yield picture;
        done += 1;
        onProgress?.(done / notes.length);
      }
    }
  }

  const jpegs = await encodeJpegs(tools, { size, colours, frames: finished(), signal });
  const stillOf = new Map(rising.map((note, index) => [note, jpegs[index]]));
  return notes.flatMap((note) => {
    const jpeg = stillOf.get(note);
    return jpeg === undefined ? [] : [{ note, size, jpeg }];
  });
}
