import { type SeenPart, seenPoint } from '../framing/picturePlaces.ts';
import { type FrameRange, nearestIn } from '../framing/section.ts';
import { ontoFirst, steadied } from '../motion/camera/cameraPath.ts';
import { inverseOf } from '../motion/camera/similarity.ts';
import type { SetMeasurement } from '../motion/measurement.ts';
import type { CameraPath, PointPx } from '../recording/recording.ts';
import { frameAtUs, frameStartUs } from '../time/frames.ts';
import type { FrameTable } from '../time/frameTable.ts';

/** First and last frame of a rep. */
export type FrameSpan = readonly [first: number, last: number];

/** A point in pixels of the upright picture; null = not seen. */
export type PathPoint = readonly [x: number, y: number] | null;

/** Six numbers of an affine map, as the `matrix` of SVG takes them. */
export type PathMatrix = readonly [number, number, number, number, number, number];

/** The path of the load: its points laid over the first frame, and what lays them over each other frame. */
export type LoadPath = {
  readonly reps: readonly FrameSpan[];
  /** One a frame. */
  readonly points: readonly PathPoint[];
  /** One a frame; null where the camera stood still. */
  readonly ontoFrame: readonly PathMatrix[] | null;
};

/** The span that a frame lies in; where two meet, the later. */
export const spanAt = (spans: readonly FrameSpan[], frame: number): FrameSpan | undefined =>
  spans.findLast(([first, last]) => frame >= first && frame <= last);

/** To a tenth of a pixel. */
export const roundedPx = (px: number): number => Math.round(px * 10) / 10;
/** Turns so that they hold a tenth of a pixel over the largest picture. */
const roundedTurn = (value: number): number => Math.round(value * 1e6) / 1e6;

function matrixOnto(camera: CameraPath, frame: number): PathMatrix {
  const { a, b, shiftXPx, shiftYPx } = inverseOf(ontoFirst(camera, frame));
  return [
    ...([roundedTurn(a), roundedTurn(b), roundedTurn(-b), roundedTurn(a)] as const),
    ...([roundedPx(shiftXPx), roundedPx(shiftYPx)] as const),
  ];
}

function pointOnFirst(camera: CameraPath | null, frame: number, seen: PointPx): PathPoint {
  const { xPx, yPx } = steadied(camera, frame, seen);
  return [roundedPx(xPx), roundedPx(yPx)];
}

/** What is seen of a picture over some frames of its footage. */
export type PartOfFootage = { readonly range: FrameRange; readonly part: SeenPart };

/** The path in what is seen of the picture, over the frames that are shown. */
export function pathInPart({ reps, points, ontoFrame }: LoadPath, { range, part }: PartOfFootage): LoadPath {
  const { firstFrame, lastFrame } = range;
  const own = (frame: number) => nearestIn(range, frame) - firstFrame;
  const shown = <T>(items: readonly T[]) => items.slice(firstFrame, lastFrame + 1);
  return {
    reps: reps
      .filter(([first, last]) => last >= firstFrame && first <= lastFrame)
      .map(([first, last]) => [own(first), own(last)]),
    points: shown(points).map((point) => {
      if (point === null) return null;
      const { x, y } = seenPoint(part, { x: point[0], y: point[1] });
      return [roundedPx(x), roundedPx(y)];
    }),
    ontoFrame: ontoFrame && shown(ontoFrame).map((matrix) => matrixInPart(matrix, part)),
  };
}

/** The same map of places in what is seen: what is seen is brought back, mapped, and seen again. */
function matrixInPart([a, b, c, d, e, f]: PathMatrix, { left, top, right, mirrored }: SeenPart): PathMatrix {
  const [sense, shiftX, shiftY] = [mirrored ? -1 : 1, mirrored ? right : -left, -top];
  return [
    ...([a, sense * b, sense * c, d] as const),
    roundedPx(shiftX - a * shiftX - sense * c * shiftY + sense * e),
    roundedPx(shiftY - sense * b * shiftX - d * shiftY + f),
  ];
}

/** The path of what was measured; null where no rep was. */
export function loadPathOf(
  { reps, curves }: SetMeasurement,
  camera: CameraPath | null,
  table: FrameTable,
): LoadPath | null {
  if (reps.length === 0) return null;
  const firstUs = frameStartUs(table, 0);
  const frameAtS = (atS: number): number => frameAtUs(table, Math.round(firstUs + atS * 1e6));
  return {
    reps: reps.map(({ startS, endS }) => [frameAtS(startS), frameAtS(endS)]),
    points: curves.positionPx.map((seen, frame) => (seen === null ? null : pointOnFirst(camera, frame, seen))),
    ontoFrame: camera?.moves && camera.removable ? camera.frames.map((_, frame) => matrixOnto(camera, frame)) : null,
  };
}
