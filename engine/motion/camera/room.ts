import { Adjustment, addUsualPose, type Equations, posedBy, sightOf, type View } from './adjustment.ts';
import { solveSymmetric } from './cholesky.ts';
import { atRest, type Pose, type RoomPoint } from './pose.ts';

/** A patch of the room, and how well its nearness is known (one standard deviation). */
export type KnownPoint = RoomPoint & { readonly nearnessSd: number };

/** The room as its patches tell it. */
export type Room = {
  readonly focalPx: number;
  /** One a view that it was made from. */
  readonly poses: readonly Pose[];
  /** One a patch; null: it doesn't stand still, or too little is seen of it. */
  readonly points: readonly (KnownPoint | null)[];
  /** Standard deviation of what is left along one axis, in pixels. */
  readonly spreadPx: number;
};

const rounds = Number(process.env.ROUNDS ?? 24);
/** The last of them without the patches that don't keep to the room. */
const roundsAlone = 8;
/** What lies further off counts little; the reach begins wide. */
const reachPx = { first: 4, least: 0.3, shrink: 0.7 } as const;
/** A patch of the room is found within twice the reach in this share of the views that could show it. */
const leastShare = 0.6;
const leastViews = 4;
const leastPoints = 8;

/**
 * Finds the camera's pose at each view and the nearness of each patch together, by least squares over all places that let go of
 * outliers (bundle adjustment; Triggs et al. 1999). Poses are told against the first view. Null when too few patches keep to one
 * room.
 */
export function solveRoom(
  views: readonly View[],
  start: {
    readonly poses: readonly Pose[];
    readonly focalPx: number;
    /** In how many of the views each patch lies within the picture, whether or not it was found there. */
    readonly within: readonly number[];
  },
): Room | null {
  const count = (views[0]?.length ?? 0) / 2;
  if (views.length < leastViews || count < leastPoints) return null;
  const adjustment = new Adjustment(views, start);
  let reach: number = reachPx.first;
  for (let round = 0; round < rounds; round += 1) {
    if (!adjustment.step(reach)) return null;
    reach = Math.max(reachPx.least, reach * reachPx.shrink);
    if (round === rounds - roundsAlone)
      adjustment.leaveOut((point) => keptSights(adjustment, point, reach, start.within) === null);
  }
  return resultOf(adjustment, start.within, reach);
}

/** The sights of a point that keep to the room; null when these are too few. */
function keptSights(adjustment: Adjustment, point: number, reach: number, inPicture: readonly number[]) {
  const sights = adjustment.sightsOf(point, reach);
  const within = sights.filter(({ leftX, leftY }) => Math.hypot(leftX, leftY) < 2 * reach);
  const possible = Math.max(sights.length, inPicture[point] ?? 0);
  return sights.length >= leastViews && within.length >= leastShare * possible ? within : null;
}

function resultOf(adjustment: Adjustment, inPicture: readonly number[], reach: number): Room | null {
  const kept = inPicture.map((_, point) => keptSights(adjustment, point, reach, inPicture));
  const squares = kept.flatMap((sights) => (sights ?? []).flatMap(({ leftX, leftY }) => [leftX ** 2, leftY ** 2]));
  if (kept.filter((sights) => sights !== null).length < leastPoints) return null;
  const spreadPx = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
  const points = kept.map((sights, index): KnownPoint | null => {
    const point = adjustment.points[index];
    if (!sights || !point) return null;
    const tells = sights.reduce((sum, { byPoint }) => sum + (byPoint[2] ?? 0) ** 2 + (byPoint[5] ?? 0) ** 2, 0);
    return { ...point, nearnessSd: spreadPx / Math.sqrt(tells + 1e-12) };
  });
  return { focalPx: adjustment.focalPx, poses: adjustment.poses, points, spreadPx };
}

/**
 * The pose from which a view shows the room's patches where it does, beginning with one nearby, and the pose's covariance (seven
 * by seven: turn, shift, zoom). Null when fewer than eight patches agree.
 */
export function poseIn(
  { points, focalPx, spreadPx }: Room,
  view: View,
  near: Pose,
): { readonly pose: Pose; readonly covariance: Float64Array; readonly agreeing: number } | null {
  let pose = near;
  let reach: number = reachPx.first;
  for (let round = 0; round < 10; round += 1) {
    const { size, matrix, right } = equationsOf({ points, focalPx }, view, pose, reach);
    if (!solveSymmetric(matrix, right)) return null;
    pose = posedBy(pose, right.subarray(0, size));
    reach = Math.max(reachPx.least, reach * 0.6);
  }
  const last = equationsOf({ points, focalPx }, view, pose, reach);
  if (last.agreeing < leastPoints) return null;
  return { pose, covariance: covarianceOf(last, spreadPx), agreeing: last.agreeing };
}

function equationsOf(
  { points, focalPx }: Pick<Room, 'points' | 'focalPx'>,
  view: View,
  pose: Pose,
  reach: number,
): Equations & { readonly agreeing: number } {
  const size = 7;
  const matrix = new Float64Array(size * size);
  const right = new Float64Array(size);
  let agreeing = 0;
  points.forEach((point, index) => {
    const [xPx = Number.NaN, yPx = Number.NaN] = [view[2 * index], view[2 * index + 1]];
    if (!point || Number.isNaN(xPx)) return;
    const { weight, leftX, leftY, byPose } = sightOf(pose, point, { focalPx, xPx, yPx, reachPx: reach });
    if (Math.hypot(leftX, leftY) < 2 * reach) agreeing += 1;
    for (let a = 0; a < size; a += 1) {
      const [ax, ay] = [weight * (byPose[a] ?? 0), weight * (byPose[size + a] ?? 0)];
      for (let b = 0; b < size; b += 1)
        matrix[size * a + b] = (matrix[size * a + b] ?? 0) + ax * (byPose[b] ?? 0) + ay * (byPose[size + b] ?? 0);
      right[a] = (right[a] ?? 0) + ax * leftX + ay * leftY;
    }
  });
  addUsualPose(pose, 0, { size, matrix, right });
  return { size, matrix, right, agreeing };
}

function covarianceOf({ size, matrix }: Equations, spreadPx: number): Float64Array {
  const covariance = new Float64Array(size * size);
  for (let column = 0; column < size; column += 1) {
    const unit = new Float64Array(size);
    unit[column] = spreadPx ** 2;
    if (solveSymmetric(Float64Array.from(matrix), unit)) covariance.set(unit, column * size);
  }
  return covariance;
}

/** The pose that a similarity about the picture's middle amounts to: turned up, down and round, and nearer or zoomed. */
export function poseLike(
  {
    xPx,
    yPx,
    turnRad,
    scale,
  }: { readonly xPx: number; readonly yPx: number; readonly turnRad: number; readonly scale: number },
  focalPx: number,
): Pose {
  const turn = [-yPx / focalPx, xPx / focalPx, turnRad] as const;
  const zooms = Math.abs(Math.log(scale)) > 0.05;
  return {
    turn,
    shift: zooms ? atRest.shift : [0, 0, 1 / scale - 1],
    zoom: zooms ? Math.log(scale) : 0,
  };
}
