import type { Body } from '../../recording/recording.ts';
import { type Bodies, between, distancePx, jointOf, otherSide, quantile, type Side } from './points.ts';

/** The confidence from which a joint counts as seen. */
export const leastConfidence = 0.2;

/**
 * Standing height over the sum of ear-shoulder, shoulder-hip, hip-knee and knee-ankle: of the height, shank and thigh are
 * 0.491 and the trunk 0.288 (Drillis & Contini 1966), the neck up to the ear 0.118, so that 0.897 is in the sum.
 */
const heightOverSegments = 1 / 0.897;

/**
 * The lifter's standing height in pixels, from the lengths of the segments, so that it holds in any posture; null when too
 * little is seen. Good to about 10 %.
 */
export function bodyHeightPx({ frames }: Bodies): number | null {
  const heights = frames.flatMap((body) => {
    const sides =
      body === null ? [] : [segmentsOf(body, 'left'), segmentsOf(body, 'right')].filter((px) => px !== null);
    return sides.length === 0 ? [] : [Math.max(...sides)];
  });
  // Segments that point at the camera look short, never long: the larger values are the true ones.
  return heights.length < 3 ? null : heightOverSegments * quantile(heights, 0.75);
}

function segmentsOf(body: Body, side: Side): number | null {
  const chain = (['shoulder', 'hip', 'knee', 'ankle'] as const).map((part) => jointOf(body, part, side));
  if (chain.some(({ confidence }) => confidence < leastConfidence)) return null;
  const ears = between(jointOf(body, 'ear', side), jointOf(body, 'ear', otherSide(side)));
  return [ears, ...chain].reduce((sum, place, i, all) => {
    const before = all[i - 1];
    return before === undefined ? 0 : sum + distancePx(before, place);
  }, 0);
}
