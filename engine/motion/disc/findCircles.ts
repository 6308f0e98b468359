import { type GreyPicture, shrink } from '../picture/picture.ts';

/** A circle that may be a disc's rim. `strength`: share of its circumference with an edge along it, 0-1. */
export type FoundCircle = {
  readonly xPx: number;
  readonly yPx: number;
  readonly radiusPx: number;
  readonly strength: number;
};

/** Long side of the picture the search is done in: a disc is then 10-60 pixels across its radius. */
const searchLongSide = 320;

/**
 * Finds circles by their rims: each edge point votes, along the direction of its gradient, for the centres it may belong
 * to at each radius (the voting of Hough's transform for circles, with the gradient's direction: Kimme, Ballard &
 * Sklansky 1975). Radii from 4 % to 30 % of the picture's short side. Strongest first, none within another's middle.
 */
export function findCircles(picture: GreyPicture, most: number): FoundCircle[] {
  const factor = Math.max(1, Math.max(picture.width, picture.height) / searchLongSide);
  const small = shrink(picture, factor);
  const edges = edgesOf(small);
  const shortSide = Math.min(small.width, small.height);
  const found: FoundCircle[] = [];
  const least = Math.max(5, shortSide * 0.04);
  const largest = shortSide * 0.3;
  const votes = new Float32Array(small.width * small.height);
  for (let radius = least; radius <= largest; radius *= 1.06) {
    vote(votes, small, edges, radius);
    found.push(...peaks(votes, small, radius));
  }
  found.sort((one, other) => other.strength - one.strength);
  const kept: FoundCircle[] = [];
  for (const circle of found) {
    if (kept.length >= most) break;
    if (!kept.some((other) => sameCircle(circle, other))) kept.push(circle);
  }
  return kept.map(({ xPx, yPx, radiusPx, strength }) => ({
    xPx: xPx * factor,
    yPx: yPx * factor,
    radiusPx: radiusPx * factor,
    strength,
  }));
}

function sameCircle(one: FoundCircle, other: FoundCircle): boolean {
  const apart = Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);
  return (
    apart < 0.35 * Math.max(one.radiusPx, other.radiusPx) && Math.abs(Math.log(one.radiusPx / other.radiusPx)) < 0.25
  );
}

type Edges = { readonly at: Int32Array; readonly towardX: Float32Array; readonly towardY: Float32Array };

function edgesOf({ width, height, data }: GreyPicture): Edges {
  const at: number[] = [];
  const towardX: number[] = [];
  const towardY: number[] = [];
  for (let row = 1; row < height - 1; row += 1) {
    for (let column = 1; column < width - 1; column += 1) {
      const here = row * width + column;
      const value = (offset: number) => data[here + offset] ?? 0;
      const acrossPx =
        value(1 - width) + 2 * value(1) + value(1 + width) - value(-1 - width) - 2 * value(-1) - value(width - 1);
      const downPx =
        value(width - 1) +
        2 * value(width) +
        value(width + 1) -
        value(-width - 1) -
        2 * value(-width) -
        value(1 - width);
      const size = Math.hypot(acrossPx, downPx);
      if (size < 40) continue;
      at.push(here);
      towardX.push(acrossPx / size);
      towardY.push(downPx / size);
    }
  }
  return { at: Int32Array.from(at), towardX: Float32Array.from(towardX), towardY: Float32Array.from(towardY) };
}

function vote(
  votes: Float32Array,
  { width, height }: GreyPicture,
  { at, towardX, towardY }: Edges,
  radius: number,
): void {
  votes.fill(0);
  for (let edge = 0; edge < at.length; edge += 1) {
    const here = at[edge] ?? 0;
    const x = (here % width) + 0.5;
    const y = Math.floor(here / width) + 0.5;
    const stepX = (towardX[edge] ?? 0) * radius;
    const stepY = (towardY[edge] ?? 0) * radius;
    add(votes, width, height, x + stepX, y + stepY);
    add(votes, width, height, x - stepX, y - stepY);
  }
}

function add(votes: Float32Array, width: number, height: number, x: number, y: number): void {
  const column = Math.floor(x);
  const row = Math.floor(y);
  if (column < 1 || row < 1 || column >= width - 1 || row >= height - 1) return;
  const here = row * width + column;
  votes[here] = (votes[here] ?? 0) + 1;
}

/** Local maxima of the votes within three by three cells, as shares of the circumference. */
function peaks(votes: Float32Array, { width, height }: GreyPicture, radius: number): FoundCircle[] {
  const found: FoundCircle[] = [];
  const circumference = 2 * Math.PI * radius;
  const summed = (here: number) => {
    let sum = 0;
    for (const row of [-width, 0, width])
      sum += (votes[here + row - 1] ?? 0) + (votes[here + row] ?? 0) + (votes[here + row + 1] ?? 0);
    return sum;
  };
  for (let row = 2; row < height - 2; row += 1) {
    for (let column = 2; column < width - 2; column += 1) {
      const here = row * width + column;
      if ((votes[here] ?? 0) < 3) continue;
      const sum = summed(here);
      // Two pixels of an edge's width vote, so a whole rim gives about twice its circumference.
      const strength = sum / (2 * circumference);
      if (strength < 0.3) continue;
      if (sum < summed(here - 1) || sum < summed(here + 1) || sum < summed(here - width) || sum < summed(here + width))
        continue;
      found.push({ xPx: column + 0.5, yPx: row + 0.5, radiusPx: radius, strength: Math.min(1, strength) });
    }
  }
  return found;
}
