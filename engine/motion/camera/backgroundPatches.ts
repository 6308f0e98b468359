import type { GreyPicture } from '../picture/picture.ts';

/** Half the side of a patch; it is 2 × half + 1 pixels square. */
const half = 7;
const cellsAcross = 10;
const cellsDown = 8;
/** Least eigenvalue of a patch's structure, by pixel, at which it holds still in both directions (Shi & Tomasi 1994). */
const leastTexture = 12;

/** A textured bit of the first picture, with what is needed to find it again. */
export type Patch = {
  readonly xPx: number;
  readonly yPx: number;
  readonly values: Float32Array;
  readonly slopeX: Float32Array;
  readonly slopeY: Float32Array;
  /** Inverse of the patch's structure matrix. */
  readonly inverse: readonly [xx: number, xy: number, yy: number];
};

/** The best-textured patch of each cell of a grid over the picture, where there is one. */
export function pickPatches(picture: GreyPicture): Patch[] {
  const patches: Patch[] = [];
  const margin = half + 2;
  const cellWidth = (picture.width - 2 * margin) / cellsAcross;
  const cellHeight = (picture.height - 2 * margin) / cellsDown;
  if (cellWidth < 4 || cellHeight < 4) return [];
  for (let row = 0; row < cellsDown; row += 1) {
    for (let column = 0; column < cellsAcross; column += 1) {
      let best: Patch | null = null;
      let most = leastTexture;
      for (const down of [0.25, 0.5, 0.75]) {
        for (const across of [0.25, 0.5, 0.75]) {
          const x = Math.round(margin + (column + across) * cellWidth);
          const y = Math.round(margin + (row + down) * cellHeight);
          const { patch, texture } = patchAt(picture, x, y);
          if (texture <= most) continue;
          most = texture;
          best = patch;
        }
      }
      if (best) patches.push(best);
    }
  }
  return patches;
}

function patchAt({ width, data }: GreyPicture, column: number, row: number): { patch: Patch; texture: number } {
  const side = 2 * half + 1;
  const values = new Float32Array(side * side);
  const slopeX = new Float32Array(side * side);
  const slopeY = new Float32Array(side * side);
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let down = -half; down <= half; down += 1) {
    for (let across = -half; across <= half; across += 1) {
      const here = (row + down) * width + column + across;
      const at = (down + half) * side + across + half;
      values[at] = data[here] ?? 0;
      const acrossSlope = ((data[here + 1] ?? 0) - (data[here - 1] ?? 0)) / 2;
      const downSlope = ((data[here + width] ?? 0) - (data[here - width] ?? 0)) / 2;
      slopeX[at] = acrossSlope;
      slopeY[at] = downSlope;
      xx += acrossSlope * acrossSlope;
      xy += acrossSlope * downSlope;
      yy += downSlope * downSlope;
    }
  }
  const texture = ((xx + yy) / 2 - Math.sqrt(((xx - yy) / 2) ** 2 + xy * xy)) / (side * side);
  const determinant = Math.max(1e-6, xx * yy - xy * xy);
  const inverse = [yy / determinant, -xy / determinant, xx / determinant] as const;
  return { patch: { xPx: column + 0.5, yPx: row + 0.5, values, slopeX, slopeY, inverse }, texture };
}

/**
 * Finds a patch again in a later picture, from where it is expected, by the iteration of Lucas & Kanade (1981) with the
 * first picture's slopes. Overall changes of light are let through. Null when it is not there.
 */
export function findPatch(
  picture: GreyPicture,
  patch: Patch,
  expected: { readonly xPx: number; readonly yPx: number },
): { readonly xPx: number; readonly yPx: number } | null {
  let { xPx, yPx } = expected;
  let miss = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 6; round += 1) {
    if (!fits(picture, xPx, yPx)) return null;
    const step = stepOf(picture, patch, xPx, yPx);
    miss = step.miss;
    xPx += step.x;
    yPx += step.y;
    if (Math.hypot(xPx - expected.xPx, yPx - expected.yPx) > 6) return null;
    if (Math.hypot(step.x, step.y) < 0.02) break;
  }
  return miss < 9 ? { xPx, yPx } : null;
}

function fits({ width, height }: GreyPicture, xPx: number, yPx: number): boolean {
  const margin = half + 1.5;
  return xPx > margin && yPx > margin && xPx < width - margin && yPx < height - margin;
}

function stepOf({ width, data }: GreyPicture, patch: Patch, xPx: number, yPx: number) {
  const side = 2 * half + 1;
  const left = Math.floor(xPx - 0.5);
  const top = Math.floor(yPx - 0.5);
  const right = xPx - 0.5 - left;
  const below = yPx - 0.5 - top;
  const weights = [(1 - right) * (1 - below), right * (1 - below), (1 - right) * below, right * below] as const;
  let meanOff = 0;
  const off = offs;
  for (let down = 0; down < side; down += 1) {
    let here = (top + down - half) * width + left - half;
    for (let across = 0; across < side; across += 1, here += 1) {
      const value =
        (data[here] ?? 0) * weights[0] +
        (data[here + 1] ?? 0) * weights[1] +
        (data[here + width] ?? 0) * weights[2] +
        (data[here + width + 1] ?? 0) * weights[3];
      const at = down * side + across;
      const difference = (patch.values[at] ?? 0) - value;
      off[at] = difference;
      meanOff += difference;
    }
  }
  meanOff /= side * side;
  let pullX = 0;
  let pullY = 0;
  let miss = 0;
  for (let at = 0; at < side * side; at += 1) {
    const difference = (off[at] ?? 0) - meanOff;
    pullX += difference * (patch.slopeX[at] ?? 0);
    pullY += difference * (patch.slopeY[at] ?? 0);
    miss += Math.abs(difference);
  }
  const [xx, xy, yy] = patch.inverse;
  return { x: xx * pullX + xy * pullY, y: xy * pullX + yy * pullY, miss: miss / (side * side) };
}

const offs = new Float32Array((2 * half + 1) ** 2);
