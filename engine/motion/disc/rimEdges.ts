import type { GreyPicture } from '../picture/picture.ts';

/** Edge points of a picture: their places, and the unit directions in which brightness grows. */
export type RimEdges = {
  readonly count: number;
  readonly xPx: Float32Array;
  readonly yPx: Float32Array;
  readonly towardX: Float32Array;
  readonly towardY: Float32Array;
};

/** Sum of Sobel's operator that an edge has at least. */
const leastGradient = 40;
/** An edge stands still when the earlier picture has nearly its gradient there or beside it. */
const sameShare = 0.5;

/** How brightness grows across and down at a place, by Sobel's operator. */
function gradientAt({ width, data }: GreyPicture, here: number): readonly [acrossPx: number, downPx: number] {
  const at = (offset: number) => data[here + offset] ?? 0;
  const upperLeft = at(-1 - width);
  const upperRight = at(1 - width);
  const lowerLeft = at(width - 1);
  const lowerRight = at(1 + width);
  return [
    upperRight + 2 * at(1) + lowerRight - upperLeft - 2 * at(-1) - lowerLeft,
    lowerLeft + 2 * at(width) + lowerRight - upperLeft - 2 * at(-width) - upperRight,
  ];
}

/** Where the picture was some moments earlier, and how far its background has moved since. */
export type Earlier = { readonly picture: GreyPicture; readonly shiftXPx: number; readonly shiftYPx: number };

/** Of the edges that have moved, so large a share of the picture's points is kept: the strongest. Grain moves everywhere. */
const mostMoving = 0.06;

/** The edge points of a picture; with an earlier picture of the same size, those alone that have moved against the background. */
export function rimEdgesOf(picture: GreyPicture, earlier: Earlier | null = null): RimEdges {
  const { width, height } = picture;
  const xPx: number[] = [];
  const yPx: number[] = [];
  const towardX: number[] = [];
  const towardY: number[] = [];
  const sizes: number[] = [];
  for (let row = 1; row < height - 1; row += 1) {
    for (let column = 1; column < width - 1; column += 1) {
      const gradient = gradientAt(picture, row * width + column);
      const size = Math.hypot(gradient[0], gradient[1]);
      if (size < leastGradient) continue;
      if (earlier !== null && stoodStill(earlier, { column, row, gradient, size })) continue;
      xPx.push(column + 0.5);
      yPx.push(row + 0.5);
      sizes.push(size);
      towardX.push(gradient[0] / size);
      towardY.push(gradient[1] / size);
    }
  }
  const least = earlier === null ? 0 : leastOfStrongest(sizes, Math.round(mostMoving * width * height));
  const kept = (values: readonly number[]) =>
    Float32Array.from(values.filter((_, edge) => (sizes[edge] ?? 0) >= least));
  const keptX = kept(xPx);
  return { count: keptX.length, xPx: keptX, yPx: kept(yPx), towardX: kept(towardX), towardY: kept(towardY) };
}

/** The smallest of so many of the largest; 0 when there are no more than that. */
function leastOfStrongest(sizes: readonly number[], most: number): number {
  if (sizes.length <= most) return 0;
  return Float64Array.from(sizes).sort()[sizes.length - most] ?? 0;
}

type Edge = {
  readonly column: number;
  readonly row: number;
  readonly gradient: readonly [acrossPx: number, downPx: number];
  readonly size: number;
};

function stoodStill({ picture, shiftXPx, shiftYPx }: Earlier, { column, row, gradient, size }: Edge): boolean {
  const middleColumn = column - Math.round(shiftXPx);
  const middleRow = row - Math.round(shiftYPx);
  for (let nearRow = middleRow - 1; nearRow <= middleRow + 1; nearRow += 1) {
    if (nearRow < 1 || nearRow >= picture.height - 1) continue;
    for (let nearColumn = middleColumn - 1; nearColumn <= middleColumn + 1; nearColumn += 1) {
      if (nearColumn < 1 || nearColumn >= picture.width - 1) continue;
      const then = gradientAt(picture, nearRow * picture.width + nearColumn);
      if (Math.hypot(then[0] - gradient[0], then[1] - gradient[1]) < sameShare * size) return true;
    }
  }
  return false;
}
