import type { FrameTable } from '../../../../../engine/time/frameTable.ts';
import type { FrameRate } from '../../../media/write/encodeVideo.ts';

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
