import { Adjustment, addUsualPose, type Equations, posedBy, type View } from './adjustment.ts';
import { solveSymmetric } from './cholesky.ts';
import { atRest, type Pose, type RoomPoint } from './pose.ts';
import { fillSight, newSight, ofPose, turned } from './sight.ts';

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

const rounds = 22;
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

/** What the sights of a point that keep to the room leave, squared, and tell of its nearness; null when these are too few. */
function keptSights(adjustment: Adjustment, point: number, reach: number, inPicture: readonly number[]) {
  let seen = 0;
  let kept = 0;
  let squares = 0;
  let tells = 0;
  adjustment.eachSight(point, reach, ({ leftX, leftY, byPoint }) => {
    seen += 1;
    if (Math.hypot(leftX, leftY) >= 2 * reach) return;
    kept += 1;
    squares += leftX ** 2 + leftY ** 2;
    tells += (byPoint[2] ?? 0) ** 2 + (byPoint[5] ?? 0) ** 2;
  });
  const possible = Math.max(seen, inPicture[point] ?? 0);
  return seen >= leastViews && kept >= leastShare * possible ? { kept, squares, tells } : null;
}

function resultOf(adjustment: Adjustment, inPicture: readonly number[], reach: number): Room | null {
  const kept = inPicture.map((_, point) => keptSights(adjustment, point, reach, inPicture));
  const known = kept.filter((one) => one !== null);
  if (known.length < leastPoints) return null;
  const squares = known.reduce((sum, one) => sum + one.squares, 0);
  const spreadPx = Math.sqrt(squares / known.reduce((sum, one) => sum + 2 * one.kept, 0));
  const points = kept.map((sights, index): KnownPoint | null => {
    const point = adjustment.points[index];
    if (!sights || !point) return null;
    return { ...point, nearnessSd: spreadPx / Math.sqrt(sights.tells + 1e-12) };
  });
  return { focalPx: adjustment.focalPx, poses: adjustment.poses, points, spreadPx };
}

const poseRounds = 7;
const poseShrink = 0.5;

/** The pose from which a view shows the room's patches where it does, beginning with one nearby; null when too few of them agree. */
export function poseIn({ points, focalPx }: Pick<Room, 'points' | 'focalPx'>, view: View, near: Pose): Pose | null {
  let pose = near;
  let reach: number = reachPx.first;
  let agreeing = 0;
  for (let round = 0; round < poseRounds; round += 1) {
    const { matrix, right, ...equations } = equationsOf({ points, focalPx }, view, { pose, zoomed: near.zoom, reach });
    if (!solveSymmetric(matrix, right)) return null;
    agreeing = equations.agreeing;
    pose = posedBy(pose, right);
    reach = Math.max(reachPx.least, reach * poseShrink);
  }
  return agreeing < leastPoints ? null : pose;
}

function equationsOf(
  { points, focalPx }: Pick<Room, 'points' | 'focalPx'>,
  view: View,
  { pose, zoomed, reach }: { readonly pose: Pose; readonly zoomed: number; readonly reach: number },
): Equations & { readonly agreeing: number } {
  const size = ofPose;
  const matrix = new Float64Array(size * size);
  const right = new Float64Array(size);
  const sight = newSight();
  const { byPose } = sight;
  const from = turned(pose);
  let agreeing = 0;
  points.forEach((point, index) => {
    const [xPx = Number.NaN, yPx = Number.NaN] = [view[2 * index], view[2 * index + 1]];
    if (!point || Number.isNaN(xPx)) return;
    fillSight(sight, from, point, { focalPx, xPx, yPx, reachPx: reach });
    const { weight, leftX, leftY } = sight;
    if (Math.hypot(leftX, leftY) < 2 * reach) agreeing += 1;
    for (let a = 0; a < size; a += 1) {
      const ax = weight * (byPose[a] ?? 0);
      const ay = weight * (byPose[size + a] ?? 0);
      for (let b = 0; b <= a; b += 1)
        matrix[size * a + b] = (matrix[size * a + b] ?? 0) + ax * (byPose[b] ?? 0) + ay * (byPose[size + b] ?? 0);
      right[a] = (right[a] ?? 0) + ax * leftX + ay * leftY;
    }
  });
  addUsualPose(pose, { at: 0, zoomed }, { size, matrix, right });
  return { size, matrix, right, agreeing };
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
