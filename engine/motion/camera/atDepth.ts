import type { CameraPath, PointPx } from '../../recording/recording.ts';
import { solveSymmetric } from './cholesky.ts';
import { fitPlane, isOnPlane, onPlane, type Plane } from './plane.ts';
import { type RoomPoint, seenAtFirst } from './pose.ts';
import { fillSight, newSight, turned } from './sight.ts';

export type Room = NonNullable<CameraPath['room']>;

/** A nearness with its standard deviation. */
export type Nearness = { readonly value: number; readonly sd: number };

/** The sides of the square over which a place's surroundings are laid over the first frame, in focal lengths. */
const around = 0.03;

/**
 * The camera's path for something of a nearness: in each frame the similarity that lays it, and what is round it as far away, over
 * the first. `places`: where it is in each frame; where that isn't known, the middle of where it was.
 */
export function cameraAt(camera: CameraPath, nearness: number, places: readonly (PointPx | null)[]): CameraPath {
  const { room } = camera;
  if (!room || !camera.moves || !camera.removable) return camera;
  const middle = middleOf(places) ?? room.middle;
  const frames = room.frames.map((_, frame) => {
    const at = places[frame] ?? middle;
    const offPx = around * room.focalPx;
    const left = placeAtFirst(room, frame, { xPx: at.xPx - offPx, yPx: at.yPx }, nearness);
    const right = placeAtFirst(room, frame, { xPx: at.xPx + offPx, yPx: at.yPx }, nearness);
    const first = placeAtFirst(room, frame, at, nearness);
    const a = (right.xPx - left.xPx) / (2 * offPx);
    const b = (right.yPx - left.yPx) / (2 * offPx);
    return {
      shiftXPx: first.xPx - (a * at.xPx - b * at.yPx),
      shiftYPx: first.yPx - (b * at.xPx + a * at.yPx),
      turnDeg: (Math.atan2(b, a) * 180) / Math.PI,
      scale: Math.hypot(a, b),
    };
  });
  return { ...camera, frames };
}

function middleOf(places: readonly (PointPx | null)[]): PointPx | null {
  const seen = places.filter((place) => place !== null);
  if (seen.length === 0) return null;
  const mean = (axis: 'xPx' | 'yPx') => seen.reduce((sum, place) => sum + place[axis], 0) / seen.length;
  return { xPx: mean('xPx'), yPx: mean('yPx') };
}

/** Where the first frame has what a frame shows at a place, if it is as near as told. */
function placeAtFirst({ frames, middle, focalPx }: Room, frame: number, at: PointPx, nearness: number): PointPx {
  const pose = frames[frame];
  if (!pose) return at;
  const place = { x: (at.xPx - middle.xPx) / focalPx, y: (at.yPx - middle.yPx) / focalPx };
  const { x, y } = seenAtFirst(pose, place, nearness);
  return { xPx: middle.xPx + focalPx * x, yPx: middle.yPx + focalPx * y };
}

const leastOnFloor = 5;
/** So many patches are enough to find the floor, spread over what lies lowest in the picture. */
const mostTried = 36;
/** The floor ends at the horizon, which lies above a place on it by at least this many focal lengths. */
const leastBelowHorizon = 0.05;
/** And by no more than this: else it is as good as upright. */
const mostBelowHorizon = 1.2;

/**
 * How near the floor is at a place of the first frame: on a plane nearness runs straight across a picture, so it is the straight
 * run that most patches keep to, among those that get nearer downward. Null where no floor shows.
 */
export function floorNearness({ patches, middle, focalPx }: Room, at: PointPx): Nearness | null {
  const places = patches.map(({ xPx, yPx, nearness }) => ({
    x: (xPx - middle.xPx) / focalPx,
    y: (yPx - middle.yPx) / focalPx,
    nearness,
  }));
  const x = (at.xPx - middle.xPx) / focalPx;
  const y = (at.yPx - middle.yPx) / focalPx;
  let best: readonly RoomPoint[] = [];
  const tried = [...places].sort((one, other) => other.y - one.y).slice(0, mostTried);
  for (const [one, first] of tried.entries()) {
    for (const [two, second] of tried.slice(one + 1).entries()) {
      for (const third of tried.slice(one + two + 2)) {
        const plane = planeThrough(first, second, third);
        if (!plane || !isFloor(plane, x, y)) continue;
        const keeping = tried.filter((place) => isOnPlane(plane, place));
        if (keeping.length > best.length) best = keeping;
      }
    }
  }
  if (best.length < leastOnFloor) return null;
  return fitted(best, x, y);
}

function planeThrough(a: RoomPoint, b: RoomPoint, c: RoomPoint): Plane | null {
  const twice = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
  if (Math.abs(twice) < 0.005) return null;
  const right = ((b.nearness - a.nearness) * (c.y - a.y) - (c.nearness - a.nearness) * (b.y - a.y)) / twice;
  const down = ((c.nearness - a.nearness) * (b.x - a.x) - (b.nearness - a.nearness) * (c.x - a.x)) / twice;
  return [a.nearness - right * a.x - down * a.y, right, down];
}

/** A floor gets nearer downward, little to either side, and its horizon lies well above what stands on it. */
function isFloor(plane: Plane, x: number, y: number): boolean {
  const here = onPlane(plane, { x, y });
  const [, right, down] = plane;
  return (
    here > 0 &&
    down > 0 &&
    Math.abs(right) < down / 2 &&
    here / down > leastBelowHorizon &&
    here / down < mostBelowHorizon
  );
}

function fitted(points: readonly RoomPoint[], x: number, y: number): Nearness | null {
  const plane = fitPlane(points, () => 1);
  if (!plane) return null;
  const left = points.map((point) => point.nearness - onPlane(plane, point));
  const variance = left.reduce((sum, one) => sum + one * one, 0) / Math.max(1, points.length - 3);
  return { value: onPlane(plane, { x, y }), sd: Math.sqrt(variance / points.length) };
}

/** Places of something that stands are as good as one in so many seconds: what puts them wrong lasts. */
const independentS = 0.5;
const rounds = 8;

/**
 * How near something is that stands still: what makes the camera's own movement account best for where it was seen. `usual`
 * is what is known before. Null when it was hardly seen, or moves by itself more than `mostStrayPx`.
 */
export function standingNearness(
  { frames, middle, focalPx }: Room,
  places: readonly (PointPx | null)[],
  {
    timesS,
    usual,
    mostStrayPx,
  }: { readonly timesS: readonly number[]; readonly usual: Nearness; readonly mostStrayPx: number },
): Nearness | null {
  const seen = places.flatMap((place, frame) => {
    const pose = frames[frame];
    return place && pose ? [{ pose: turned(pose), xPx: place.xPx - middle.xPx, yPx: place.yPx - middle.yPx }] : [];
  });
  const [first] = seen;
  const spanS = (timesS.at(-1) ?? 0) - (timesS[0] ?? 0);
  if (!first || seen.length < 10 || spanS < 2 * independentS) return null;
  const start = seenAtFirst(first.pose.pose, { x: first.xPx / focalPx, y: first.yPx / focalPx }, usual.value);
  let point: RoomPoint = { ...start, nearness: usual.value };
  let strayPx = mostStrayPx;
  const each = Math.min(1, spanS / independentS / seen.length);
  let sd = usual.sd;
  const sight = newSight();
  for (let round = 0; round < rounds; round += 1) {
    const matrix = new Float64Array(9);
    const right = new Float64Array(3);
    const strays = seen.map(({ pose, xPx, yPx }) => {
      fillSight(sight, pose, point, { focalPx, xPx, yPx, reachPx: 3 * strayPx });
      const { weight, leftX, leftY, byPoint } = sight;
      for (let a = 0; a < 3; a += 1) {
        const [ax, ay] = [weight * (byPoint[a] ?? 0), weight * (byPoint[3 + a] ?? 0)];
        for (let b = 0; b < 3; b += 1)
          matrix[3 * a + b] = (matrix[3 * a + b] ?? 0) + ax * (byPoint[b] ?? 0) + ay * (byPoint[3 + b] ?? 0);
        right[a] = (right[a] ?? 0) + ax * leftX + ay * leftY;
      }
      return Math.hypot(leftX, leftY);
    });
    strays.sort((one, other) => one - other);
    strayPx = Math.max(0.3, strays[strays.length >> 1] ?? 0);
    const pull = (strayPx / usual.sd) ** 2 / each;
    matrix[8] = (matrix[8] ?? 0) + pull;
    right[2] = (right[2] ?? 0) + pull * (usual.value - point.nearness);
    const unit = Float64Array.of(0, 0, 1);
    if (!solveSymmetric(Float64Array.from(matrix), unit) || !solveSymmetric(matrix, right)) return null;
    sd = strayPx * Math.sqrt((unit[2] ?? 0) / each);
    point = { x: point.x + (right[0] ?? 0), y: point.y + (right[1] ?? 0), nearness: point.nearness + (right[2] ?? 0) };
  }
  return strayPx > mostStrayPx ? null : { value: point.nearness, sd };
}
