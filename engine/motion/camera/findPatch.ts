import type { GreyPicture } from '../picture/picture.ts';
import { patchHalf as half, type Patch } from './backgroundPatches.ts';
import type { Similarity } from './similarity.ts';

const rounds = 6;
/** How far a patch may be from where it is expected, in pixels. */
const furthestPx = 6;
const settledPx = 0.02;
/** Mean difference of brightness beyond which it is something else. */
const mostMiss = 9;
/** A picture turned and scaled by less than this is read straight, in pixels at a patch's corner. */
const straightPx = 0.15;

/**
 * Finds a patch again in a later picture, from where it is expected, by the iteration of Lucas & Kanade (1981) with the
 * first picture's slopes. The picture is read turned and scaled as the background is by now; overall changes of light are let
 * through. Null when it is not there.
 */
export function findPatch(
  picture: GreyPicture,
  patch: Patch,
  expected: { readonly xPx: number; readonly yPx: number },
  { a, b }: Pick<Similarity, 'a' | 'b'>,
): { readonly xPx: number; readonly yPx: number } | null {
  const straight = Math.max(Math.abs(a - 1), Math.abs(b)) * half < straightPx;
  const reach = straight ? half : half * (Math.abs(a) + Math.abs(b));
  let { xPx, yPx } = expected;
  let miss = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round += 1) {
    if (!fits(picture, xPx, yPx, reach)) return null;
    if (straight) readStraight(picture, patch, xPx, yPx);
    else readTurned(picture, patch, { xPx, yPx, a, b });
    const step = stepOf(patch);
    miss = step.miss;
    const [across, down] = straight ? [step.x, step.y] : [a * step.x - b * step.y, b * step.x + a * step.y];
    xPx += across;
    yPx += down;
    if (Math.hypot(xPx - expected.xPx, yPx - expected.yPx) > furthestPx) return null;
    if (Math.hypot(across, down) < settledPx) break;
  }
  return miss < mostMiss ? { xPx, yPx } : null;
}

function fits({ width, height }: GreyPicture, xPx: number, yPx: number, reach: number): boolean {
  const margin = reach + 1.5;
  return xPx > margin && yPx > margin && xPx < width - margin && yPx < height - margin;
}

const side = 2 * half + 1;
/** How the patch differs from the picture at the place last read. */
const offs = new Float32Array(side * side);

function readStraight({ width, data }: GreyPicture, { values }: Patch, xPx: number, yPx: number): void {
  const left = Math.floor(xPx - 0.5);
  const top = Math.floor(yPx - 0.5);
  const right = xPx - 0.5 - left;
  const below = yPx - 0.5 - top;
  const weights = [(1 - right) * (1 - below), right * (1 - below), (1 - right) * below, right * below] as const;
  for (let down = 0; down < side; down += 1) {
    let here = (top + down - half) * width + left - half;
    for (let across = 0; across < side; across += 1, here += 1) {
      const value =
        (data[here] ?? 0) * weights[0] +
        (data[here + 1] ?? 0) * weights[1] +
        (data[here + width] ?? 0) * weights[2] +
        (data[here + width + 1] ?? 0) * weights[3];
      const at = down * side + across;
      offs[at] = (values[at] ?? 0) - value;
    }
  }
}

function readTurned(
  { width, data }: GreyPicture,
  { values }: Patch,
  { xPx, yPx, a, b }: { readonly xPx: number; readonly yPx: number; readonly a: number; readonly b: number },
): void {
  for (let down = -half; down <= half; down += 1) {
    for (let across = -half; across <= half; across += 1) {
      const x = xPx - 0.5 + a * across - b * down;
      const y = yPx - 0.5 + b * across + a * down;
      const left = Math.floor(x);
      const top = Math.floor(y);
      const right = x - left;
      const below = y - top;
      const here = top * width + left;
      const value =
        ((data[here] ?? 0) * (1 - right) + (data[here + 1] ?? 0) * right) * (1 - below) +
        ((data[here + width] ?? 0) * (1 - right) + (data[here + width + 1] ?? 0) * right) * below;
      const at = (down + half) * side + across + half;
      offs[at] = (values[at] ?? 0) - value;
    }
  }
}

/** The step towards the patch, in its own axes, and what it misses now. */
function stepOf({ slopeX, slopeY, inverse }: Patch): { readonly x: number; readonly y: number; readonly miss: number } {
  let mean = 0;
  for (let at = 0; at < side * side; at += 1) mean += offs[at] ?? 0;
  mean /= side * side;
  let pullX = 0;
  let pullY = 0;
  let miss = 0;
  for (let at = 0; at < side * side; at += 1) {
    const difference = (offs[at] ?? 0) - mean;
    pullX += difference * (slopeX[at] ?? 0);
    pullY += difference * (slopeY[at] ?? 0);
    miss += Math.abs(difference);
  }
  const [xx, xy, yy] = inverse;
  return { x: xx * pullX + xy * pullY, y: xy * pullX + yy * pullY, miss: miss / (side * side) };
}
