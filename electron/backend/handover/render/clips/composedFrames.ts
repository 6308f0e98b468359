import { clockUsAt } from '../../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../../engine/time/frameTable.ts';
import type { PictureSize } from '../../../media/probe/streams.ts';
import { readPictures } from '../../../media/read/readPictures.ts';
import type { MediaTools } from '../../../media/tools/mediaTools.ts';
import type { FrameRate } from '../../../media/write/encodeVideo.ts';
import { type Layer, layOver, planarBytes } from '../overlay/layer.ts';
import type { Overlay, Shown } from '../overlay/overlay.ts';
import { type ClipToShow, framesOf } from '../picture.ts';
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
  const { file, table, shown, framing: look } = clip;
  const { firstFrame, lastFrame } = timeline;
  const footage = readPictures(tools, file, {
    ...{ table, shown, look, firstFrame, lastFrame, signal },
    ...{ planes: 'colour', shrinkTo: size, bytes: 'shared' },
  });
  const zeroUs = clockUsAt(table, framesOf(clip).firstFrame);
  const count = shotCount(timeline, rate);
  const picture = new Uint8Array(planarBytes(size));
  let decoded = await footage.next();
  let last: Shown | null = null;
  let done = 0;
  try {
    for (const shot of shotsOf(timeline, rate)) {
      if (shot.kind === 'card') {
        if (done === 0 && card !== null) layOver(picture, size, card);
      } else if (last === null || last.frame !== shot.frame || last.notes !== shot.notes) {
        while (!decoded.done && decoded.value.frame < shot.frame) decoded = await footage.next();
        if (decoded.done) return;
        last = { frame: shot.frame, notes: shot.notes, path: 'soFar', clockUs: clockUsAt(table, shot.frame) - zeroUs };
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

const usual: readonly FrameRate[] = [
  { numerator: 24_000, denominator: 1_001 },
  { numerator: 24, denominator: 1 },
  { numerator: 25, denominator: 1 },
  { numerator: 30_000, denominator: 1_001 },
  { numerator: 30, denominator: 1 },
  { numerator: 48, denominator: 1 },
  { numerator: 50, denominator: 1 },
  { numerator: 60_000, denominator: 1_001 },
  { numerator: 60, denominator: 1 },
];
const nearEnough = 0.0005;

/**
 * The constant rate that a clip is written at: its own where it is a usual one, else the next usual one above its mean
 * rate; at most 60, because not every phone plays more.
 */
export function outputRate({ ticks, timeBase }: FrameTable): FrameRate {
  const spanTicks = (ticks.at(-1) ?? 0) - (ticks[0] ?? 0);
  const fps = spanTicks > 0 ? ((ticks.length - 1) * timeBase.denominator) / (spanTicks * timeBase.numerator) : 30;
  const fpsOf = ({ numerator, denominator }: FrameRate) => numerator / denominator;
  const own = usual.find((rate) => Math.abs(fpsOf(rate) / fps - 1) < nearEnough);
  return own ?? usual.find((rate) => fpsOf(rate) >= fps && rate.denominator === 1) ?? { numerator: 60, denominator: 1 };
}
