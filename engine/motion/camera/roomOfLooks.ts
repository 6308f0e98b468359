import type { CameraPath, PointPx } from '../../recording/recording.ts';
import type { View } from './adjustment.ts';
import { shareOffPlane } from './plane.ts';
import type { Pose } from './pose.ts';
import { poseIn, poseLike, type Room, solveRoom } from './room.ts';
import { moved, type Similarity } from './similarity.ts';

/** What one picture showed: the similarity that most patches agree on, and where each patch is; in pixels of the smaller picture. */
export type Look = {
  readonly frame: number;
  readonly here: Similarity | null;
  readonly places: readonly (PointPx | null)[];
};

/** The room is found from so many looks spread over the clip. */
const mostViews = 28;
/** Focal length / long side of the picture: that of most phones' films. */
const usualFocal = 0.9;
/** A focal length off by more than this, as a logarithm, is none that phones film with: the room is made up. */
const farFromUsual = 0.5;
/** A patch nearer to the edge may not be found. */
const marginPx = 16;
/** From far to near, of distances that are 1 in the mean. */
const leastDepth = 0.12;
/** Far end of a deep plane / near end. */
const deepPlane = 2;
/** So much of its nearness is a patch off a plane, and at least so many are. */
const offPlane = 0.12;
const leastOffPlane = 0.08;

/**
 * The room and the camera's pose in each frame, from where patches of the background were seen; in pixels of the full picture.
 * Null when too little was seen, or what was seen is no one room.
 */
export function roomOfLooks(
  looks: readonly Look[],
  {
    size,
    factor,
    frames,
    marks,
  }: {
    readonly size: { readonly width: number; readonly height: number };
    readonly factor: number;
    readonly frames: number;
    /** Where the first picture has each patch, or would, and the frame it was taken in. */
    readonly marks: readonly (PointPx & { readonly frame: number })[];
  },
): CameraPath['room'] | null {
  const middle = { xPx: size.width / factor / 2, yPx: size.height / factor / 2 };
  const focalPx = (usualFocal * Math.max(size.width, size.height)) / factor;
  const count = marks.length;
  const seen = looks.flatMap(({ frame, here, places }) =>
    here ? [{ frame, here, view: viewOf(places, count, middle), start: startOf(here, middle, focalPx) }] : [],
  );
  const chosen = spread(seen, mostViews);
  const room = solveRoom(
    chosen.map(({ view }) => view),
    {
      poses: chosen.map(({ start }) => start),
      focalPx,
      within: marks.map(
        (mark) => chosen.filter(({ frame, here }) => frame >= mark.frame && isWithin(moved(here, mark), middle)).length,
      ),
    },
  );
  if (!room || !hasDepth(room) || Math.abs(Math.log(room.focalPx / focalPx)) > farFromUsual) return null;
  const poses = seen.flatMap(({ frame, view, start }) => {
    const pose = poseIn(room, view, start);
    return pose ? [{ frame, pose }] : [];
  });
  if (poses.length < 0.9 * seen.length) return null;
  return {
    focalPx: room.focalPx * factor,
    middle: { xPx: size.width / 2, yPx: size.height / 2 },
    frames: framesThrough(poses, frames),
    patches: patchesOf(room, { middle, factor }),
    spreadPx: room.spreadPx * factor,
  };
}

/**
 * Whether patches lie at distances different enough to tell a shift of the camera from a turn, bar the outermost tenths; a single
 * plane does so only when it reaches far into the room, as a floor does; otherwise some must lie off it.
 */
function hasDepth({ points }: Room): boolean {
  const known = points.filter((point) => point !== null);
  const nearness = known.map((point) => point.nearness).sort((one, other) => one - other);
  const at = (share: number) => nearness[Math.floor(share * (nearness.length - 1))] ?? 0;
  if (at(0.9) - at(0.1) < leastDepth) return false;
  return at(0.9) > deepPlane * at(0.1) || shareOffPlane(known, offPlane) >= leastOffPlane;
}

function viewOf(places: Look['places'], count: number, middle: PointPx): View {
  const view = new Float64Array(2 * count).fill(Number.NaN);
  places.forEach((place, index) => {
    view[2 * index] = place ? place.xPx - middle.xPx : Number.NaN;
    view[2 * index + 1] = place ? place.yPx - middle.yPx : Number.NaN;
  });
  return view;
}

/** Whether a patch there lies in the picture with all of it. */
const isWithin = ({ xPx, yPx }: PointPx, middle: PointPx): boolean =>
  Math.min(xPx, 2 * middle.xPx - xPx, yPx, 2 * middle.yPx - yPx) > marginPx;

function startOf(similarity: Similarity, middle: PointPx, focalPx: number): Pose {
  const to = moved(similarity, middle);
  return poseLike(
    {
      xPx: to.xPx - middle.xPx,
      yPx: to.yPx - middle.yPx,
      turnRad: Math.atan2(similarity.b, similarity.a),
      scale: Math.hypot(similarity.a, similarity.b),
    },
    focalPx,
  );
}

/** So many of the items at most, the first among them, spread evenly. */
function spread<T>(items: readonly T[], most: number): readonly T[] {
  if (items.length <= most) return items;
  return Array.from({ length: most }, (_, index) => Math.round((index * (items.length - 1)) / (most - 1))).flatMap(
    (at) => items[at] ?? [],
  );
}

type PoseOfFrame = { readonly frame: number; readonly pose: Pose };

function framesThrough(seen: readonly PoseOfFrame[], frames: number): NonNullable<CameraPath['room']>['frames'] {
  let next = 0;
  return Array.from({ length: frames }, (_, frame) => {
    while (next < seen.length - 1 && (seen[next]?.frame ?? 0) < frame) next += 1;
    const after = seen[next];
    const before = after && after.frame > frame ? (seen[next - 1] ?? after) : after;
    if (!after || !before) return { turn: [0, 0, 0], shift: [0, 0, 0], zoom: 0 };
    const span = after.frame - before.frame;
    return mixed(before.pose, after.pose, span > 0 ? (frame - before.frame) / span : 0);
  });
}

function mixed(one: Pose, other: Pose, share: number): { turn: Triple; shift: Triple; zoom: number } {
  const mix = (from: number, to: number) => rounded(from + (to - from) * share);
  const mixThree = (from: Pose['turn'], to: Pose['turn']): Triple => [
    mix(from[0], to[0]),
    mix(from[1], to[1]),
    mix(from[2], to[2]),
  ];
  return {
    turn: mixThree(one.turn, other.turn),
    shift: mixThree(one.shift, other.shift),
    zoom: mix(one.zoom, other.zoom),
  };
}

type Triple = [number, number, number];
/** Beyond a millionth nothing is known: a focal length has a few thousand pixels at most. */
const rounded = (value: number): number => Math.round(value * 1e6) / 1e6;

function patchesOf(room: Room, { middle, factor }: { readonly middle: PointPx; readonly factor: number }) {
  return room.points.flatMap((point) => {
    if (!point) return [];
    const { x, y, nearness, nearnessSd } = point;
    return [
      {
        xPx: (middle.xPx + room.focalPx * x) * factor,
        yPx: (middle.yPx + room.focalPx * y) * factor,
        nearness,
        nearnessSd,
      },
    ];
  });
}
