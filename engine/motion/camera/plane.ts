import { solveSymmetric } from './cholesky.ts';
import type { RoomPoint } from './pose.ts';

/** Nearness over a picture as it runs on a plane: at its middle, and how it grows to the right and downward. */
export type Plane = readonly [at: number, right: number, down: number];

/** Patches keep to a plane when their nearness differs by no more than this share from what it has there. */
const keepsToPlane = 0.03;
const rounds = 6;

export const onPlane = ([at, right, down]: Plane, { x, y }: { readonly x: number; readonly y: number }): number =>
  at + right * x + down * y;

export const isOnPlane = (plane: Plane, point: RoomPoint): boolean =>
  Math.abs(onPlane(plane, point) / point.nearness - 1) < keepsToPlane;

/** The plane nearest to points by least squares, each counting by its weight; null where they give none. */
export function fitPlane(points: readonly RoomPoint[], weightOf: (point: RoomPoint) => number): Plane | null {
  const matrix = new Float64Array(9);
  const right = new Float64Array(3);
  for (const point of points) {
    const weight = weightOf(point);
    const row = [1, point.x, point.y] as const;
    row.forEach((one, a) => {
      row.forEach((other, b) => {
        matrix[3 * a + b] = (matrix[3 * a + b] ?? 0) + weight * one * other;
      });
      right[a] = (right[a] ?? 0) + weight * one * point.nearness;
    });
  }
  if (!solveSymmetric(matrix, right)) return null;
  return [right[0] ?? 0, right[1] ?? 0, right[2] ?? 0];
}

/** The share of points whose nearness is off by more than `off` of itself from the plane that most of them make up. */
export function shareOffPlane(points: readonly RoomPoint[], off: number): number {
  const missOf = (plane: Plane, point: RoomPoint) => Math.abs(onPlane(plane, point) / point.nearness - 1);
  let plane = fitPlane(points, () => 1);
  for (let round = 0; round < rounds && plane; round += 1) {
    const before = plane;
    plane = fitPlane(points, (point) => 1 / (1 + (missOf(before, point) / keepsToPlane) ** 2));
  }
  if (!plane) return 0;
  const last = plane;
  return points.filter((point) => missOf(last, point) > off).length / Math.max(1, points.length);
}
