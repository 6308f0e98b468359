import { brightnessAt, type GreyPicture, isInside } from '../picture/picture.ts';
import type { Rings } from './rings.ts';
import { type DiscShape, spokesOf } from './shape.ts';

/** How many spokes of a disc are looked along. */
export const spokeCount = 72;
const leastChange = 12;

/** Edge points of one picture, kept apart by coordinate so that nothing is made anew for each. */
const room = spokeCount * 12;
const values = new Float64Array(256);

/**
 * The edges found along a disc's circles. For each: the direction in which the circle faces there, how far the edge is
 * from where it was expected in that direction, its place from the centre, and how far it moves when the radius grows by one.
 */
export const edgePoints = {
  facesAcross: new Float64Array(room),
  facesDown: new Float64Array(room),
  fromCentreX: new Float64Array(room),
  fromCentreY: new Float64Array(room),
  stretch: new Float64Array(room),
  offPx: new Float64Array(room),
  strength: new Float64Array(room),
  spoke: new Int32Array(room),
} as const;

/**
 * Fills `edgePoints` with the strongest change of brightness of the right sign within `windowPx` of each circle, square to
 * the circle, along every spoke; gives how many were found.
 */
export function collectEdges(picture: GreyPicture, shape: DiscShape, rings: Rings, windowPx: number): number {
  const { facesAcross, facesDown, fromCentreX, fromCentreY, stretch, offPx, strength, spoke: spokeOf } = edgePoints;
  const spokes = spokesOf(shape, spokeCount);
  let points = 0;
  const half = Math.ceil(windowPx * 2);
  const count = 2 * half + 5;
  for (let spoke = 0; spoke < spokeCount; spoke += 1) {
    const outX = (spokes.across[spoke] ?? 0) * shape.radiusPx;
    const outY = (spokes.down[spoke] ?? 0) * shape.radiusPx;
    const faceX = spokes.facesAcross[spoke] ?? 0;
    const faceY = spokes.facesDown[spoke] ?? 0;
    for (const { share, sign } of rings) {
      if (points >= room) return points;
      const middleX = shape.xPx + outX * share;
      const middleY = shape.yPx + outY * share;
      if (!isInside(picture, middleX + faceX * (windowPx + 1), middleY + faceY * (windowPx + 1))) continue;
      for (let step = 0; step < count; step += 1) {
        const off = (step - half - 2) / 2;
        values[step] = brightnessAt(picture, middleX + faceX * off, middleY + faceY * off);
      }
      const peak = strongest(count, sign);
      if (!peak) continue;
      facesAcross[points] = faceX;
      facesDown[points] = faceY;
      fromCentreX[points] = outX * share;
      fromCentreY[points] = outY * share;
      stretch[points] = ((outX * faceX + outY * faceY) * share) / shape.radiusPx;
      offPx[points] = (peak.step - half - 2) / 2;
      strength[points] = peak.change;
      spokeOf[points] = spoke;
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

/** An edge point this near to the fit shows the disc. */
const seenWithinPx = 1.25;
/** Scatter told when no point fits. */
const boundless = 99;

/**
 * How well a fit explains the edge points: the share of the spokes that show it, and the scatter of their points.
 * `expectedAt`: how far off the fit says a point is.
 */
export function judgeFit(
  points: number,
  expectedAt: (point: number) => number,
): { readonly coverage: number; readonly spreadPx: number } {
  const seen = new Uint8Array(spokeCount);
  let squares = 0;
  let near = 0;
  for (let point = 0; point < points; point += 1) {
    const miss = (edgePoints.offPx[point] ?? 0) - expectedAt(point);
    if (Math.abs(miss) > seenWithinPx) continue;
    seen[edgePoints.spoke[point] ?? 0] = 1;
    squares += miss * miss;
    near += 1;
  }
  let spokesSeen = 0;
  for (const one of seen) spokesSeen += one;
  return { coverage: spokesSeen / spokeCount, spreadPx: near === 0 ? boundless : Math.sqrt(squares / near) };
}

/** Finds the middle value in place, by parting about a pivot again and again; the order is lost. */
export function medianOf(numbers: Float64Array): number {
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
