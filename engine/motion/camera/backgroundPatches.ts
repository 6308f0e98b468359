import type { GreyPicture } from '../picture/picture.ts';

/** Half the side of a patch; it is 2 × half + 1 pixels square. */
export const patchHalf = 7;
const half = patchHalf;
const cellsAcross = 10;
const cellsDown = 8;
/** Least eigenvalue of a patch's structure, by pixel, at which it holds still in both directions (Shi & Tomasi 1994). */
const leastTexture = 12;
/** The same for faint patches, on a finer grid; these keep clear of the others. */
const leastFaintTexture = 2;
const faintCellsAcross = 12;
const faintCellsDown = 10;
const clearPx = half + 3;

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
  return bestOfCells(picture, { across: cellsAcross, down: cellsDown, leastTexture, clearOf: [] });
}

/** Further patches between others: fainter ones too, such as the marks of a floor. */
export function pickFaintPatches(picture: GreyPicture, others: readonly Patch[]): Patch[] {
  const grid = { across: faintCellsAcross, down: faintCellsDown, leastTexture: leastFaintTexture };
  return bestOfCells(picture, { ...grid, clearOf: others });
}

type Cells = {
  readonly across: number;
  readonly down: number;
  readonly leastTexture: number;
  readonly clearOf: readonly Patch[];
};

function bestOfCells(picture: GreyPicture, { across: columns, down: rows, leastTexture, clearOf }: Cells): Patch[] {
  const patches: Patch[] = [];
  const margin = half + 2;
  const cellWidth = (picture.width - 2 * margin) / columns;
  const cellHeight = (picture.height - 2 * margin) / rows;
  if (cellWidth < 4 || cellHeight < 4) return [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      let best: Patch | null = null;
      let most = leastTexture;
      for (const down of [0.25, 0.5, 0.75]) {
        for (const across of [0.25, 0.5, 0.75]) {
          const x = Math.round(margin + (column + across) * cellWidth);
          const y = Math.round(margin + (row + down) * cellHeight);
          if (clearOf.some(({ xPx, yPx }) => Math.max(Math.abs(xPx - x), Math.abs(yPx - y)) < clearPx)) continue;
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
