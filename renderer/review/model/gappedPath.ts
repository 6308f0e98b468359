import { line } from 'd3-shape';
import type { PointPx } from '../../../engine/recording/recording.ts';

const path = line<PointPx | null>()
  .defined((point) => point !== null)
  .x((point) => point?.xPx ?? 0)
  .y((point) => point?.yPx ?? 0)
  .digits(2);

/**
 * SVG path data through the points from one index of a list to another, both included. A stretch that was not seen is a
 * gap; a point alone between gaps is a dot.
 */
export const gappedPath = (points: readonly (PointPx | null)[], first: number, last: number): string =>
  path(points.slice(Math.max(0, first), Math.max(0, last + 1))) ?? '';
