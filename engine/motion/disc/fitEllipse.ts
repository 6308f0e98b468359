import type { GreyPicture } from '../picture/picture.ts';
import { collectEdges, edgePoints, judgeFit, medianOf, spokeCount } from './edgePoints.ts';
import type { FittedDisc } from './fitRings.ts';
import type { Rings } from './rings.ts';
import type { DiscShape } from './shape.ts';

export type EllipseOptions = {
  readonly rings: Rings;
  readonly windowsPx: readonly number[];
  /** How firmly size and axes are held where they start, 0 = not at all: a disc seen in part can't tell them. */
  readonly hold: number;
};

const terms = 5;
const rounds = 6;
/** Flatter than this (more than 66° beside the axis) an ellipse is no use as a disc. */
const leastRatio = 0.4;
const misses = new Float64Array(edgePoints.offPx.length);
const row = new Float64Array(terms);
const normal = new Float64Array(terms * (terms + 1));

/**
 * Lays a disc over a picture as an ellipse with centre, both axes and their direction its own, by the edges along its
 * circles and least squares that let go of outliers (Tukey's biweight). Windows are tried one after the other, widest first.
 * Null when too little is seen, or when what is seen is no disc.
 */
export function fitEllipse(
  picture: GreyPicture,
  start: DiscShape,
  { rings, windowsPx, hold }: EllipseOptions,
): FittedDisc | null {
  let fitted: FittedDisc | null = null;
  let shape = start;
  for (const windowPx of windowsPx) {
    const points = collectEdges(picture, shape, rings, windowPx);
    if (points < spokeCount / 3) return null;
    fitted = settle(shape, points, { windowPx, hold });
    if (!fitted) return null;
    shape = fitted.shape;
  }
  return fitted;
}

/** By how much an edge point moves with each of: x, y, size, and the two ways of flattening; all in pixels. */
function effectsOf(point: number, radiusPx: number): void {
  const faceX = edgePoints.facesAcross[point] ?? 0;
  const faceY = edgePoints.facesDown[point] ?? 0;
  const outX = (edgePoints.fromCentreX[point] ?? 0) / radiusPx;
  const outY = (edgePoints.fromCentreY[point] ?? 0) / radiusPx;
  row[0] = faceX;
  row[1] = faceY;
  row[2] = faceX * outX + faceY * outY;
  row[3] = faceX * outX - faceY * outY;
  row[4] = faceX * outY + faceY * outX;
}

function settle(
  shape: DiscShape,
  points: number,
  { windowPx, hold }: { readonly windowPx: number; readonly hold: number },
): FittedDisc | null {
  let change: readonly number[] = [0, 0, 0, 0, 0];
  let spreadPx = windowPx / 2;
  const expectedAt = (point: number): number => {
    effectsOf(point, shape.radiusPx);
    let expected = 0;
    for (let term = 0; term < terms; term += 1) expected += (row[term] ?? 0) * (change[term] ?? 0);
    return expected;
  };
  for (let round = 0; round < rounds; round += 1) {
    const reachPx = 2.8 * spreadPx;
    normal.fill(0);
    for (let point = 0; point < points; point += 1) {
      const off = edgePoints.offPx[point] ?? 0;
      const miss = off - expectedAt(point);
      misses[point] = Math.abs(miss);
      const ratio = miss / reachPx;
      if (ratio >= 1 || ratio <= -1) continue;
      addRow((1 - ratio * ratio) ** 2 * Math.min(1, (edgePoints.strength[point] ?? 0) / 60), off);
    }
    for (let term = 2; term < terms; term += 1) {
      const diagonal = term * (terms + 1) + term;
      normal[diagonal] = (normal[diagonal] ?? 0) + hold * points;
    }
    const solved = solve();
    if (!solved) return null;
    change = solved;
    spreadPx = Math.max(0.2, 1.48 * medianOf(misses.subarray(0, points)));
  }
  const changed = changedShape(shape, change);
  if (!changed) return null;
  return { shape: changed, ...judgeFit(points, expectedAt) };
}

/** Adds an equation (`row` × change = off) of a weight to the normal equations. */
function addRow(weight: number, off: number): void {
  for (let one = 0; one < terms; one += 1) {
    const here = one * (terms + 1);
    const weighted = weight * (row[one] ?? 0);
    for (let other = one; other < terms; other += 1) {
      normal[here + other] = (normal[here + other] ?? 0) + weighted * (row[other] ?? 0);
    }
    normal[here + terms] = (normal[here + terms] ?? 0) + weighted * off;
  }
}

/** Solves the normal equations, of which the upper half is filled, by Gauss's elimination; null when they don't determine all. */
function solve(): number[] | null {
  const at = (one: number, other: number) => one * (terms + 1) + other;
  const scale = normal[0] ?? 0;
  for (let pivot = 0; pivot < terms; pivot += 1) {
    const diagonal = normal[at(pivot, pivot)] ?? 0;
    if (!(diagonal > 1e-4 * scale)) return null;
    for (let below = pivot + 1; below < terms; below += 1) {
      const share = (normal[at(pivot, below)] ?? 0) / diagonal;
      for (let column = below; column <= terms; column += 1) {
        normal[at(below, column)] = (normal[at(below, column)] ?? 0) - share * (normal[at(pivot, column)] ?? 0);
      }
    }
  }
  const solved = new Array<number>(terms).fill(0);
  for (let one = terms - 1; one >= 0; one -= 1) {
    let sum = normal[at(one, terms)] ?? 0;
    for (let other = one + 1; other < terms; other += 1) sum -= (normal[at(one, other)] ?? 0) * (solved[other] ?? 0);
    solved[one] = sum / (normal[at(one, one)] ?? 1);
  }
  return solved;
}

/** The ellipse after a change of centre, size and flattening; null when it is no longer one that a disc may have. */
function changedShape(shape: DiscShape, change: readonly number[]): DiscShape | null {
  const [x = 0, y = 0, size = 0, flat = 0, slant = 0] = change.map((one) => one);
  const { radiusPx, axisRatio, majorAxisRad } = shape;
  const grow = { xx: 1 + (size + flat) / radiusPx, xy: slant / radiusPx, yy: 1 + (size - flat) / radiusPx };
  // The change laid over both axes, then the axes of what comes of it.
  const major = { x: Math.cos(majorAxisRad) * radiusPx, y: Math.sin(majorAxisRad) * radiusPx };
  const minor = { x: -major.y * axisRatio, y: major.x * axisRatio };
  const moved = ({ x: alongX, y: alongY }: typeof major) => ({
    x: grow.xx * alongX + grow.xy * alongY,
    y: grow.xy * alongX + grow.yy * alongY,
  });
  const one = moved(major);
  const other = moved(minor);
  const xx = one.x * one.x + other.x * other.x;
  const xy = one.x * one.y + other.x * other.y;
  const yy = one.y * one.y + other.y * other.y;
  const middle = (xx + yy) / 2;
  const half = Math.hypot((xx - yy) / 2, xy);
  if (!(middle > half)) return null;
  const longest = Math.sqrt(middle + half);
  const ratio = Math.sqrt(middle - half) / longest;
  if (!(ratio >= leastRatio) || longest < 3) return null;
  return {
    xPx: shape.xPx + x,
    yPx: shape.yPx + y,
    radiusPx: longest,
    axisRatio: ratio,
    majorAxisRad: Math.atan2(2 * xy, xx - yy) / 2,
  };
}
