import { brightnessAt, type GreyPicture, isInside } from '../picture/picture.ts';
import type { Rings } from './rings.ts';
import { type DiscShape, rimPx } from './shape.ts';

/** A disc found in a picture. `coverage`: share of the circumference that shows it; `spreadPx`: scatter of its edge points. */
export type FittedDisc = { readonly shape: DiscShape; readonly coverage: number; readonly spreadPx: number };

export type FitOptions = {
  readonly rings: Rings;
  readonly windowsPx: readonly number[];
  /** Holds the size near this one, so that a disc seen in part is not made larger or smaller to fit. */
  readonly usualRadiusPx?: number;
};

const rays = 72;
/** Weight of the usual size beside that of the edge points. */
const usualWeight = 0.15;
const leastChange = 12;
const directions = Array.from({ length: rays }, (_, ray) => {
  const directionRad = (2 * Math.PI * ray) / rays;
  return { directionRad, across: Math.cos(directionRad), down: Math.sin(directionRad) };
});

/** Edge points of one picture, kept apart by coordinate so that nothing is made anew for each. */
const room = rays * 12;
const across = new Float64Array(room);
const down = new Float64Array(room);
const stretch = new Float64Array(room);
const offPx = new Float64Array(room);
const strength = new Float64Array(room);
const rayOf = new Int32Array(room);
const values = new Float64Array(256);
const misses = new Float64Array(room);
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
    const points = collect(picture, shape, rings, windowPx);
    if (points < rays / 4) return null;
    fitted = settle(shape, points, { windowPx, usualRadiusPx });
    if (!fitted) return null;
    shape = fitted.shape;
  }
  return fitted;
}

function collect(picture: GreyPicture, shape: DiscShape, rings: Rings, windowPx: number): number {
  let points = 0;
  const half = Math.ceil(windowPx * 2);
  for (let ray = 0; ray < rays; ray += 1) {
    const direction = directions[ray];
    if (!direction) continue;
    const rim = rimPx(shape, direction.directionRad);
    for (const { share, sign } of rings) {
      const middlePx = rim * share;
      const reachPx = middlePx + windowPx + 1;
      if (points >= room) return points;
      if (!isInside(picture, shape.xPx + direction.across * reachPx, shape.yPx + direction.down * reachPx)) continue;
      const count = 2 * half + 5;
      for (let step = 0; step < count; step += 1) {
        const outPx = middlePx + (step - half - 2) / 2;
        values[step] = brightnessAt(picture, shape.xPx + direction.across * outPx, shape.yPx + direction.down * outPx);
      }
      const peak = strongest(count, sign);
      if (!peak) continue;
      across[points] = direction.across;
      down[points] = direction.down;
      stretch[points] = middlePx / shape.radiusPx;
      offPx[points] = (peak.step - half - 2) / 2;
      strength[points] = peak.change;
      rayOf[points] = ray;
      points += 1;
    }
  }
  return points;
}

/** The strongest change of a sign within the sampled stretch, between samples by a parabola. */
function strongest(count: number, sign: -1 | 0 | 1): { readonly step: number; readonly change: number } | null {
  const changeAt = (step: number) => {
    const change =
      (values[step + 2] ?? 0) + (values[step + 1] ?? 0) - (values[step - 1] ?? 0) - (values[step - 2] ?? 0);
    return sign === 0 ? Math.abs(change) : change * sign;
  };
  let best = -1;
  let most = leastChange;
  let before = changeAt(2);
  let here = changeAt(3);
  let bestBefore = 0;
  let bestAfter = 0;
  for (let step = 3; step < count - 3; step += 1) {
    const after = changeAt(step + 1);
    if (here > most && here >= before && here > after) {
      most = here;
      best = step;
      bestBefore = before;
      bestAfter = after;
    }
    before = here;
    here = after;
  }
  if (best < 0) return null;
  const bend = bestBefore - 2 * most + bestAfter;
  return { step: best + (bend < 0 ? (0.5 * (bestBefore - bestAfter)) / bend : 0), change: most };
}

function settle(
  shape: DiscShape,
  points: number,
  { windowPx, usualRadiusPx }: { readonly windowPx: number; readonly usualRadiusPx: number | undefined },
): FittedDisc | null {
  let move = { x: 0, y: 0, size: 0 };
  let spreadPx = windowPx / 2;
  for (let round = 0; round < 6; round += 1) {
    const reachPx = 2.8 * spreadPx;
    sums.fill(0);
    for (let point = 0; point < points; point += 1) {
      const x = across[point] ?? 0;
      const y = down[point] ?? 0;
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
  const { coverage, scatterPx } = judge(points, move);
  const radiusPx = shape.radiusPx + move.size;
  if (!(radiusPx > 2)) return null;
  return {
    shape: { ...shape, xPx: shape.xPx + move.x, yPx: shape.yPx + move.y, radiusPx },
    coverage,
    spreadPx: scatterPx,
  };
}

/** A direction counts as seen when one of its edge points lies within 1.25 px of the fit. */
function judge(points: number, move: { readonly x: number; readonly y: number; readonly size: number }) {
  const seen = new Uint8Array(rays);
  let squares = 0;
  let near = 0;
  for (let point = 0; point < points; point += 1) {
    const miss =
      (offPx[point] ?? 0) -
      ((across[point] ?? 0) * move.x + (down[point] ?? 0) * move.y + (stretch[point] ?? 0) * move.size);
    if (Math.abs(miss) > 1.25) continue;
    seen[rayOf[point] ?? 0] = 1;
    squares += miss * miss;
    near += 1;
  }
  let directionsSeen = 0;
  for (const one of seen) directionsSeen += one;
  return { coverage: directionsSeen / rays, scatterPx: near === 0 ? windowless : Math.sqrt(squares / near) };
}

/** Scatter told when no point fits. */
const windowless = 99;

/** Finds the middle value in place, by parting about a pivot again and again; the order is lost. */
function medianOf(numbers: Float64Array): number {
  const middle = numbers.length >> 1;
  let low = 0;
  let high = numbers.length - 1;
  while (low < high) {
    const pivot = numbers[(low + high) >> 1] ?? 0;
    let left = low;
    let right = high;
    while (left <= right) {
      while ((numbers[left] ?? 0) < pivot) left += 1;
      while ((numbers[right] ?? 0) > pivot) right -= 1;
      if (left > right) break;
      const swapped = numbers[left] ?? 0;
      numbers[left] = numbers[right] ?? 0;
      numbers[right] = swapped;
      left += 1;
      right -= 1;
    }
    if (middle <= right) high = right;
    else if (middle >= left) low = left;
    else break;
  }
  return numbers[middle] ?? 0;
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
