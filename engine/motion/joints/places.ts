import type { PointPx } from '../../recording/recording.ts';

export const distancePx = (one: PointPx, other: PointPx): number =>
  Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);

export const between = (one: PointPx, other: PointPx): PointPx => ({
  xPx: (one.xPx + other.xPx) / 2,
  yPx: (one.yPx + other.yPx) / 2,
});

/** The value below which a share of the numbers lies; NaN of none. */
export function quantile(numbers: readonly number[], share: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

export const median = (numbers: readonly number[]): number => quantile(numbers, 0.5);

/** The middle of some places, each way; null of none. */
export function middleOf(places: readonly PointPx[]): PointPx | null {
  if (places.length === 0) return null;
  return { xPx: median(places.map(({ xPx }) => xPx)), yPx: median(places.map(({ yPx }) => yPx)) };
}
