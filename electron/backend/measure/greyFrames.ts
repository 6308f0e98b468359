import type { GreyPicture } from '../../../engine/motion/picture/picture.ts';
import { frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { PictureSize } from '../media/probe/streams.ts';
import { bytesOf, type ReadOptions, type ReadPicture, readPictures } from '../media/read/readPictures.ts';
import type { MediaTools } from '../media/tools/mediaTools.ts';

/** The grey plane of a picture; it comes first, whether colour follows it or not. */
export const greyOf = (bytes: Uint8Array, { width, height }: PictureSize): GreyPicture => ({
  width,
  height,
  data: bytes.subarray(0, width * height),
});

/** When a frame appears, in media seconds. */
export const secondsOfFrame = (table: FrameTable, frame: number): number => frameStartUs(table, frame) / 1_000_000;

/** Following backward ends after so many frames in which nothing was found. */
export const longestLostFrames = 45;

/** Most bytes of pictures held at once while reading backward. */
const mostBytes = 48_000_000;

/**
 * Decodes frames from `lastFrame` down to `firstFrame`, last one first. Video decodes forward only, so a lot of frames is
 * read and handed out from its end, lot after lot; what is held stays the same however long the clip is.
 */
export async function* readBackward(
  tools: MediaTools,
  clip: string,
  options: ReadOptions & { readonly firstFrame: number; readonly lastFrame: number },
): AsyncGenerator<ReadPicture, void, void> {
  const lot = Math.max(8, Math.floor(mostBytes / bytesOf(options)));
  for (let last = options.lastFrame; last >= options.firstFrame; last -= lot) {
    const first = Math.max(options.firstFrame, last - lot + 1);
    const pictures: ReadPicture[] = [];
    for await (const picture of readPictures(tools, clip, { ...options, firstFrame: first, lastFrame: last })) {
      pictures.push(picture);
    }
    yield* pictures.reverse();
  }
}
