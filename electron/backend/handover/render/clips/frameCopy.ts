import { randomUUID } from 'node:crypto';
import { rm } from 'node:fs/promises';
import path from 'node:path';
import { tableOf } from '../../../../../engine/framing/section.ts';
import { frameEndUs, frameStartUs } from '../../../../../engine/time/frames.ts';
import { readPictureColours } from '../../../media/probe/pictureColours.ts';
import { readPictures } from '../../../media/read/readPictures.ts';
import { makeSoundtrack } from '../../../media/read/soundtrack.ts';
import type { MediaTools } from '../../../media/tools/mediaTools.ts';
import { encodeVideo } from '../../../media/write/encodeVideo.ts';
import { openOverlay } from '../overlay/overlay.ts';
import { type ClipToShow, evenSizeWithin, framesOf, type PictureWords, sizeSeenOf } from '../picture.ts';
import { outputRate } from './composedFrames.ts';

export type FrameCopyOptions = {
  readonly words: PictureWords;
  readonly sound: 'kept' | 'dropped';
  /** Called with the share done, 0-1. */
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal | undefined;
};

const longestSidePx = 1920;

/**
 * Writes the frames of a clip again, each at its own time counted from the first, as an MP4 that every browser plays: what is
 * covered in it is covered, what is cut off is not there, nothing is drawn. Whole or not at all. Throws `cancelled`, `disk`, or `bad-media`.
 */
export async function renderFrameCopy(
  tools: MediaTools,
  clip: ClipToShow,
  output: string,
  { words, sound, onProgress, signal }: FrameCopyOptions,
): Promise<void> {
  const { file, table, shown, framing: look } = clip;
  const size = evenSizeWithin(sizeSeenOf(clip), longestSidePx);
  const range = framesOf(clip);
  const own = tableOf(table, range);
  const colours = await readPictureColours(tools, file, signal);
  const bare: ClipToShow = { ...clip, measurement: null, camera: null, body: null, drawings: [] };
  const overlay = await openOverlay(bare, { size, colours, words, said: [] });

  async function* frames(): AsyncGenerator<Uint8Array, void, void> {
    const reading = {
      table,
      shown,
      look,
      shrinkTo: size,
      planes: 'colour',
      bytes: 'shared',
      ...range,
      signal,
    } as const;
    for await (const { frame, bytes } of readPictures(tools, file, reading)) {
      overlay.finish(bytes, { frame, path: 'soFar', notes: [], clockUs: null });
      yield bytes;
      onProgress?.((frame - range.firstFrame + 1) / own.ticks.length);
    }
  }

  const soundtrack =
    sound === 'kept' && clip.hasSound ? path.join(tools.temporary, `rackside-sound-${randomUUID()}`) : null;
  try {
    if (soundtrack !== null) {
      const fromUs = frameStartUs(own, 0);
      const lastsUs = frameEndUs(own, own.ticks.length - 1) - fromUs;
      await makeSoundtrack(tools, file, soundtrack, { table, pieces: [{ fromUs, lastsUs }], signal });
    }
    await encodeVideo(tools, output, {
      size,
      rate: outputRate(own),
      times: own,
      colours,
      frames: frames(),
      quality: 'good',
      soundtrack,
      signal,
    });
  } finally {
    if (soundtrack !== null) await rm(soundtrack, { force: true });
  }
}
