import type { PictureSize } from '../../../media/probe/upright.ts';
import { readPictures } from '../../../media/read/readPictures.ts';
import type { MediaTools } from '../../../media/tools/mediaTools.ts';
import type { FrameRate } from '../../../media/write/encodeVideo.ts';
import { type Layer, layOver } from '../overlay/layer.ts';
import type { Overlay, Shown } from '../overlay/overlay.ts';
import { planarBytes } from '../overlay/planes.ts';
import type { ClipToShow } from '../picture.ts';
import { shotCount, shotsOf, type Timeline } from './timeline.ts';

export type Composition = {
  readonly timeline: Timeline;
  readonly rate: FrameRate;
  readonly size: PictureSize;
  readonly overlay: Overlay;
  readonly card: Layer | null;
  /** Called with the share done, 0-1. */
  readonly onProgress?: ((share: number) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
};

/**
 * The pictures of a laid-out clip, one after the other, all in the same bytes: the footage is decoded once, a frame at a
 * time, and nothing is held but the frame in hand.
 */
export async function* composedFrames(
  tools: MediaTools,
  clip: ClipToShow,
  { timeline, rate, size, overlay, card, onProgress, signal }: Composition,
): AsyncGenerator<Uint8Array, void, void> {
  const { file, table, shown } = clip;
  const { firstFrame, lastFrame } = timeline;
  const footage = readPictures(tools, file, {
    ...{ table, shown, firstFrame, lastFrame, signal },
    ...{ planes: 'colour', shrinkTo: size, bytes: 'shared' },
  });
  const count = shotCount(timeline, rate);
  const picture = new Uint8Array(planarBytes(size));
  let decoded = await footage.next();
  let last: Shown | null = null;
  let done = 0;
  try {
    for (const shot of shotsOf(timeline, rate)) {
      if (shot.kind === 'card') {
        if (done === 0 && card !== null) layOver(picture, size, card);
      } else if (last === null || last.frame !== shot.frame || last.note !== shot.note) {
        while (!decoded.done && decoded.value.frame < shot.frame) decoded = await footage.next();
        if (decoded.done) return;
        last = { frame: shot.frame, note: shot.note, path: 'soFar' };
        picture.set(decoded.value.bytes);
        overlay.finish(picture, last);
      }
      yield picture;
      done += 1;
      onProgress?.(Math.min(1, done / count));
    }
  } finally {
    await footage.return();
  }
}
