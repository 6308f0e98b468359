import type { PointPx } from '../../../engine/recording/recording.ts';

const figure = (value: number): string => String(Math.round(value * 100) / 100);

/**
 * SVG path data through the points from one index of a list to another, both included. A stretch that was not seen is a
 * gap; a point alone between gaps is a dot.
 */
export function gappedPath(points: readonly (PointPx | null)[], first: number, last: number): string {
  let path = '';
  let drawn = 0;
  for (let index = Math.max(0, first); index <= Math.min(last, points.length - 1); index += 1) {
    const point = points[index];
    if (point == null) {
      if (drawn === 1) path += 'h0';
      drawn = 0;
      continue;
    }
    path += `${drawn === 0 ? 'M' : 'L'}${figure(point.xPx)} ${figure(point.yPx)}`;
    drawn += 1;
  }
  return drawn === 1 ? `${path}h0` : path;
}
