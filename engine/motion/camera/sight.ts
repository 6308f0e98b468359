import { type Pose, type RoomPoint, type Rotation, rotationBy } from './pose.ts';

/** A pose with its rotation worked out. */
export type TurnedPose = { readonly pose: Pose; readonly rotation: Rotation };

export const turned = (pose: Pose): TurnedPose => ({ pose, rotation: rotationBy(pose.turn) });

/** Unknowns of a pose: turn, shift and zoom. */
export const ofPose = 7;

/**
 * One patch in one view: what pose and point leave of its place, and how what they tell changes with them. Written anew for
 * each sight, since there are very many.
 */
export type Sight = {
  weight: number;
  leftX: number;
  leftY: number;
  /** Two rows of seven: turn, shift, zoom. By the logarithm of the focal length it changes as by the zoom. */
  readonly byPose: Float64Array;
  /** Two rows of three: x, y, nearness. */
  readonly byPoint: Float64Array;
};

export const newSight = (): Sight => ({
  weight: 0,
  leftX: 0,
  leftY: 0,
  byPose: new Float64Array(2 * ofPose),
  byPoint: new Float64Array(6),
});

/** Fills in the sight of a point at a place, in pixels from the picture's middle; beyond the reach it counts little (Geman & McClure 1987). */
export function fillSight(
  sight: Sight,
  { pose: { shift, zoom }, rotation: [first, second, third] }: TurnedPose,
  { x: pointX, y: pointY, nearness }: RoomPoint,
  {
    focalPx,
    xPx,
    yPx,
    reachPx,
  }: { readonly focalPx: number; readonly xPx: number; readonly yPx: number; readonly reachPx: number },
): void {
  const ax = first[0] * pointX + first[1] * pointY + first[2];
  const ay = second[0] * pointX + second[1] * pointY + second[2];
  const az = third[0] * pointX + third[1] * pointY + third[2];
  const depth = az + nearness * shift[2];
  const size = (focalPx * Math.exp(zoom)) / depth;
  const x = size * (ax + nearness * shift[0]);
  const y = size * (ay + nearness * shift[1]);
  const inX = x / depth;
  const inY = y / depth;
  const { byPose, byPoint } = sight;
  byPose[0] = -inX * ay;
  byPose[1] = size * az + inX * ax;
  byPose[2] = -size * ay;
  byPose[3] = size * nearness;
  byPose[4] = 0;
  byPose[5] = -inX * nearness;
  byPose[6] = x;
  byPose[7] = -size * az - inY * ay;
  byPose[8] = inY * ax;
  byPose[9] = size * ax;
  byPose[10] = 0;
  byPose[11] = size * nearness;
  byPose[12] = -inY * nearness;
  byPose[13] = y;
  byPoint[0] = size * first[0] - inX * third[0];
  byPoint[1] = size * first[1] - inX * third[1];
  byPoint[2] = size * shift[0] - inX * shift[2];
  byPoint[3] = size * second[0] - inY * third[0];
  byPoint[4] = size * second[1] - inY * third[1];
  byPoint[5] = size * shift[1] - inY * shift[2];
  sight.leftX = xPx - x;
  sight.leftY = yPx - y;
  const share = (sight.leftX * sight.leftX + sight.leftY * sight.leftY) / (reachPx * reachPx);
  sight.weight = 1 / ((1 + share) * (1 + share));
}
