import type { GreyPicture } from '../picture/picture.ts';
import { collectEdges, edgePoints, judgeFit, medianOf, spokeCount } from './edgePoints.ts';
import type { Rings } from './rings.ts';
import type { DiscShape } from './shape.ts';

/** A disc found in a picture. `coverage`: share of the circumference that shows it; `spreadPx`: scatter of its edge points. */
export type FittedDisc = { readonly shape: DiscShape; readonly coverage: number; readonly spreadPx: number };

/** Up to this radius a scatter of one pixel is a large one; a larger disc is softer, and its scatter larger. */
const sharpRadiusPx = 60;

/** How surely a fit shows a disc, 0-1: by how much of the rim shows, and how little its edge points scatter. */
export function confidenceOf({ coverage, spreadPx, shape }: FittedDisc): number {
  const spread = spreadPx / Math.max(1, shape.radiusPx / sharpRadiusPx);
  return Math.min(1, coverage) / (1 + spread * spread);
}

export type FitOptions = {
  readonly rings: Rings;
  readonly windowsPx: readonly number[];
  /** Holds the size near this one, so that a disc seen in part is not made larger or smaller to fit. */
  readonly usualRadiusPx?: number;
};

/** Weight of the usual size beside that of the edge points. */
const usualWeight = 0.15;
const misses = new Float64Array(edgePoints.offPx.length);
const sums = new Float64Array(9);

/**
 * Lays a disc of known circles over a picture, starting from where it is thought to be: along rays, the strongest change
 * of brightness of the right sign within `windowPx` of each circle; then centre and size by least squares that let go of
 * outliers (Tukey's biweight). Windows are tried one after the other, widest first. Null when too little is seen.
 */
export function fitRings(
  picture: GreyPicture,
  start: DiscShape,
  { rings, windowsPx, usualRadiusPx }: FitOptions,
): FittedDisc | null {
  let shape = start;
  let fitted: FittedDisc | null = null;
  for (const windowPx of windowsPx) {
    const points = collectEdges(picture, shape, rings, windowPx);
    if (points < spokeCount / 4) return null;
    fitted = settle(shape, points, { windowPx, usualRadiusPx });
    if (!fitted) return null;
    shape = fitted.shape;
  }
  return fitted;
}

function settle(
  shape: DiscShape,
  points: number,
  { windowPx, usualRadiusPx }: { readonly windowPx: number; readonly usualRadiusPx: number | undefined },
): FittedDisc | null {
  const { facesAcross, facesDown, stretch, offPx, strength } = edgePoints;
  let move = { x: 0, y: 0, size: 0 };
  let spreadPx = windowPx / 2;
  for (let round = 0; round < 6; round += 1) {
    const reachPx = 2.8 * spreadPx;
    sums.fill(0);
    for (let point = 0; point < points; point += 1) {
      const x = facesAcross[point] ?? 0;
      const y = facesDown[point] ?? 0;
      const size = stretch[point] ?? 0;
      const off = offPx[point] ?? 0;
      const miss = off - (x * move.x + y * move.y + size * move.size);
      misses[point] = Math.abs(miss);
      const ratio = miss / reachPx;
      if (ratio >= 1 || ratio <= -1) continue;
      const weight = (1 - ratio * ratio) ** 2 * Math.min(1, (strength[point] ?? 0) / 60);
      sums[0] = (sums[0] ?? 0) + weight * x * x;
      sums[1] = (sums[1] ?? 0) + weight * x * y;
      sums[2] = (sums[2] ?? 0) + weight * x * size;
      sums[3] = (sums[3] ?? 0) + weight * y * y;
      sums[4] = (sums[4] ?? 0) + weight * y * size;
      sums[5] = (sums[5] ?? 0) + weight * size * size;
      sums[6] = (sums[6] ?? 0) + weight * x * off;
      sums[7] = (sums[7] ?? 0) + weight * y * off;
      sums[8] = (sums[8] ?? 0) + weight * size * off;
    }
    if (usualRadiusPx !== undefined) {
      const weight = usualWeight * points;
      sums[5] = (sums[5] ?? 0) + weight;
      sums[8] = (sums[8] ?? 0) + weight * (usualRadiusPx - shape.radiusPx);
    }
    const solved = solveThree(sums);
    if (!solved) return null;
    move = solved;
    spreadPx = Math.max(0.2, 1.48 * medianOf(misses.subarray(0, points)));
  }
  const { coverage, spreadPx: scatterPx } = judgeFit(
    points,
    (point) =>
      (facesAcross[point] ?? 0) * move.x + (facesDown[point] ?? 0) * move.y + (stretch[point] ?? 0) * move.size,
  );
  const radiusPx = shape.radiusPx + move.size;
  if (!(radiusPx > 2)) return null;
  return {
    shape: { ...shape, xPx: shape.xPx + move.x, yPx: shape.yPx + move.y, radiusPx },
    coverage,
    spreadPx: scatterPx,
  };
}

/**
 * Solves three normal equations of a symmetric matrix: sums = [xx, xy, xs, yy, ys, ss, x·b, y·b, s·b]. Null when they
 * don't determine the three.
 */
export function solveThree(
  sums: Float64Array,
): { readonly x: number; readonly y: number; readonly size: number } | null {
  const [xx = 0, xy = 0, xs = 0, yy = 0, ys = 0, ss = 0, bx = 0, by = 0, bs = 0] = sums;
  const minorX = yy * ss - ys * ys;
  const minorY = xs * ys - xy * ss;
  const minorSize = xy * ys - yy * xs;
  const determinant = xx * minorX + xy * minorY + xs * minorSize;
  // By the size of the diagonal, so that the test does not depend on how many points there are.
  if (!(determinant > 1e-4 * xx * yy * ss)) return null;
  return {
    x: (bx * minorX + by * minorY + bs * minorSize) / determinant,
    y: (bx * minorY + by * (xx * ss - xs * xs) + bs * (xs * xy - xx * ys)) / determinant,
    size: (bx * minorSize + by * (xs * xy - xx * ys) + bs * (xx * yy - xy * xy)) / determinant,
  };
}
