import type { CameraPath, PointPx, Recording, Upright } from '../../recording/recording.ts';
import { inverseOf, moved, type Similarity, unmoved } from './similarity.ts';

/** How the camera of a recording moved, whatever was followed in it; null when nobody looked. */
export function cameraOf({ camera, disc, point }: Pick<Recording, 'camera' | 'disc' | 'point'>): CameraPath | null {
  return camera ?? disc?.camera ?? point?.camera ?? null;
}

/** The part of a camera's path that says how the picture moved. */
export type CameraMoves = Pick<CameraPath, 'moves' | 'removable' | 'frames'>;

/**
 * What lays a frame over the first, so that the camera's own movement is gone; nothing for a camera that stands still or
 * whose movement can't be taken out.
 */
export function ontoFirst(camera: CameraMoves | null, frame: number): Similarity {
  const back = camera?.moves === true && camera.removable ? camera.frames[frame] : undefined;
  if (!back) return unmoved;
  const turn = (back.turnDeg * Math.PI) / 180;
  return {
    a: back.scale * Math.cos(turn),
    b: back.scale * Math.sin(turn),
    shiftXPx: back.shiftXPx,
    shiftYPx: back.shiftYPx,
  };
}

/** Where a point of a frame lies in the first frame. */
export const steadied = (camera: CameraMoves | null, frame: number, at: PointPx): PointPx =>
  moved(ontoFirst(camera, frame), at);

/** Where a point of the first frame lies in another. */
export const unsteadied = (camera: CameraMoves | null, frame: number, at: PointPx): PointPx =>
  moved(inverseOf(ontoFirst(camera, frame)), at);

/** Lines that lean further from the rest than this are not upright. */
const agreesWithinDeg = 0.35;
const leastLines = 3;
/** Two lines tell how lean runs across the picture when they stand further apart than this share of its width. */
const apartShare = 0.15;

/**
 * How far upright things lean in the picture at a place across it, in degrees, + = their tops to the right: the camera's
 * roll, and the converging of uprights when it looks up or down. It is the straight run of lean across the picture that
 * the greatest length of lines agrees with. Null when fewer than three lines, or less than half of their length, agree.
 */
export function plumbAt(uprights: readonly Upright[], xPx: number, widthPx: number): number | null {
  let best: readonly Upright[] = [];
  for (const run of possibleRuns(uprights, widthPx)) {
    const agreeing = uprights.filter(
      (upright) => Math.abs(upright.leanDeg - leanOn(run, upright.xPx)) <= agreesWithinDeg,
    );
    if (lengthOf(agreeing) > lengthOf(best)) best = agreeing;
  }
  if (best.length < leastLines || lengthOf(best) < 0.5 * lengthOf(uprights)) return null;
  return leanOn(fittedRun(best, widthPx), xPx);
}

/** Lean as it runs across the picture: `at` where x is `about`, `slope` degrees a pixel. */
type Run = { readonly at: number; readonly slope: number; readonly about: number };

const leanOn = ({ at, slope, about }: Run, xPx: number): number => at + slope * (xPx - about);
const lengthOf = (uprights: readonly Upright[]): number => uprights.reduce((sum, { lengthPx }) => sum + lengthPx, 0);

function* possibleRuns(uprights: readonly Upright[], widthPx: number): Generator<Run> {
  for (const [index, one] of uprights.entries()) {
    yield { at: one.leanDeg, slope: 0, about: one.xPx };
    for (const other of uprights.slice(index + 1)) {
      const apart = other.xPx - one.xPx;
      if (Math.abs(apart) < apartShare * widthPx) continue;
      yield { at: one.leanDeg, slope: (other.leanDeg - one.leanDeg) / apart, about: one.xPx };
    }
  }
}

function fittedRun(uprights: readonly Upright[], widthPx: number): Run {
  const total = lengthOf(uprights);
  const about = uprights.reduce((sum, { xPx, lengthPx }) => sum + xPx * lengthPx, 0) / total;
  const at = uprights.reduce((sum, { leanDeg, lengthPx }) => sum + leanDeg * lengthPx, 0) / total;
  const spread = uprights.reduce((sum, { xPx, lengthPx }) => sum + lengthPx * (xPx - about) ** 2, 0);
  const along = uprights.reduce(
    (sum, upright) => sum + upright.lengthPx * (upright.xPx - about) * (upright.leanDeg - at),
    0,
  );
  return { at, slope: Math.sqrt(spread / total) > (apartShare / 2) * widthPx ? along / spread : 0, about };
}
