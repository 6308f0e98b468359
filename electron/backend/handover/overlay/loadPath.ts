import type { CameraPath, PointPx, SetMeasurement } from '../../../../engine/motion/index.ts';
import type { Point } from '../../../../engine/review/index.ts';

/** The way of the load as it lies over one frame, in pixels of the upright picture. */
export type LoadPath = {
  /** Through the rep on screen; null = not seen there. Empty outside of reps. */
  readonly line: readonly (Point | null)[];
  /** Where the load is. */
  readonly now: Point | null;
};

/** `soFar`: from the rep's start to the frame; `whole`: to its end. */
export type Extent = 'soFar' | 'whole';

/** Gives the way of the load over any frame: that of the rep which the frame lies in, the camera's movement taken out. */
export function loadPathOf(
  { curves, reps }: SetMeasurement,
  camera: CameraPath | null,
): (frame: number, extent: Extent) => LoadPath {
  const laid = camera?.moves === true && camera.removable ? camera.frames : [];
  const spans = reps.map(({ startS, endS }) => ({
    first: lastNotAfter(curves.timesS, startS),
    last: lastNotAfter(curves.timesS, endS),
  }));
  return (frame, extent) => {
    const over = ({ xPx, yPx }: PointPx, from: number): Point => {
      const [theirs, ours] = [laid[from], laid[frame]];
      if (theirs === undefined || ours === undefined || from === frame) return { x: xPx, y: yPx };
      return outOfFirst(inFirst({ x: xPx, y: yPx }, theirs), ours);
    };
    const placeOver = (from: number): Point | null => {
      const place = curves.placePx[from];
      return place == null ? null : over(place, from);
    };
    const span = spans.findLast(({ first, last }) => frame >= first && frame <= last);
    const end = span === undefined ? 0 : 1 + (extent === 'whole' ? span.last : frame);
    const line =
      span === undefined ? [] : Array.from({ length: end - span.first }, (_, i) => placeOver(span.first + i));
    return { line, now: placeOver(frame) };
  };
}

type Laid = CameraPath['frames'][number];

const turnOf = ({ turnDeg, scale }: Laid): readonly [cos: number, sin: number] => {
  const turn = (turnDeg * Math.PI) / 180;
  return [scale * Math.cos(turn), scale * Math.sin(turn)];
};

function inFirst({ x, y }: Point, laid: Laid): Point {
  const [cos, sin] = turnOf(laid);
  return { x: cos * x - sin * y + laid.shiftXPx, y: sin * x + cos * y + laid.shiftYPx };
}

function outOfFirst({ x, y }: Point, laid: Laid): Point {
  const [cos, sin] = turnOf(laid);
  const [fromX, fromY] = [x - laid.shiftXPx, y - laid.shiftYPx];
  const squared = cos ** 2 + sin ** 2;
  return { x: (cos * fromX + sin * fromY) / squared, y: (cos * fromY - sin * fromX) / squared };
}

/** The last place of an ascending list of times that is not after a time; 0 before all of them. */
function lastNotAfter(timesS: readonly number[], seconds: number): number {
  let low = 0;
  let high = timesS.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((timesS[middle] ?? 0) <= seconds + 1e-6) low = middle;
    else high = middle - 1;
  }
  return low;
}
