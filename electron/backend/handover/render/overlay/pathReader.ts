import { type FrameSpan, spanAt } from '../../../../../engine/handover/loadPath.ts';
import { steadied, unsteadied } from '../../../../../engine/motion/camera/cameraPath.ts';
import { frameAtSeconds, type SetMeasurement } from '../../../../../engine/motion/measurement.ts';
import type { CameraPath } from '../../../../../engine/recording/recording.ts';
import type { Point } from '../../../../../engine/review/drawings/drawing.ts';

/** The path of the load as it lies over one frame, in pixels of the upright picture. */
export type PathOverFrame = {
  /** Through the rep on screen; null = not seen there. Empty outside of reps. */
  readonly line: readonly (Point | null)[];
  /** Where the load is. */
  readonly now: Point | null;
};

/** `soFar`: from the rep's start to the frame; `whole`: to its end. */
export type Extent = 'soFar' | 'whole';

/** Reads the load's path for any frame: the path of that frame's rep, without the camera's movement. */
export function pathReader(
  { curves, reps }: SetMeasurement,
  camera: CameraPath | null,
): (frame: number, extent: Extent) => PathOverFrame {
  const spans = reps.map(
    ({ startS, endS }): FrameSpan => [frameAtSeconds(curves.timesS, startS), frameAtSeconds(curves.timesS, endS)],
  );
  return (frame, extent) => {
    const pointOver = (from: number): Point | null => {
      const seen = curves.positionPx[from];
      if (seen == null) return null;
      const { xPx, yPx } = from === frame ? seen : unsteadied(camera, frame, steadied(camera, from, seen));
      return { x: xPx, y: yPx };
    };
    const [first, last] = spanAt(spans, frame) ?? [0, -1];
    const end = 1 + (extent === 'whole' ? last : Math.min(last, frame));
    const line = Array.from({ length: end - first }, (_, index) => pointOver(first + index));
    return { line, now: pointOver(frame) };
  };
}
