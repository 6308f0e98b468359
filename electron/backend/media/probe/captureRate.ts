import type { ProbedHeader, ProbedStream } from './streams.ts';

/** A tag that phones write into their clips. No other tag is known that states the rate itself. */
const captureTag = 'com.android.capture.fps';

/** The camera's capture rate in frames per second where the file states it, else null. */
export function readCaptureFps(header: ProbedHeader, stream: ProbedStream): number | null {
  const written = header.format.tags[captureTag] ?? stream.tags[captureTag];
  const rate = Number(written ?? Number.NaN);
  return Number.isFinite(rate) && rate > 0 && rate <= 100_000 ? rate : null;
}

/**
 * Capture rate / playback rate, 1 when the capture rate is not stated. Cameras miss their nominal rates by a few
 * per cent, so a factor within 5 % of a whole number (or of one over a whole number) is taken as that.
 */
export function realTimeFactorOf(captureFps: number | null, meanFps: number): number {
  if (captureFps === null) return 1;
  const factor = captureFps / meanFps;
  const faster = factor >= 1;
  const ratio = faster ? factor : 1 / factor;
  const nearest = Math.round(ratio);
  const rounded = Math.abs(ratio - nearest) <= 0.05 * nearest ? nearest : ratio;
  const result = faster ? rounded : 1 / rounded;
  return result >= 0.01 && result <= 100 ? result : 1;
}
