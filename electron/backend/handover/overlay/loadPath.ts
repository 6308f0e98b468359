import { steadied, unsteadied } from '../../../../engine/motion/camera/steadied.ts';
import { frameAtSeconds } from '../../../../engine/motion/frameAtSeconds.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { CameraPath } from '../../../../engine/recording/recording.ts';
import type { Point } from '../../../../engine/review/drawings/drawing.ts';

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
  const spans = reps.map(({ startS, endS }) => ({
    first: frameAtSeconds(curves.timesS, startS),
    last: frameAtSeconds(curves.timesS, endS),
  }));
  return (frame, extent) => {
    const placeOver = (from: number): Point | null => {
      const place = curves.placePx[from];
      if (place == null) return null;
      const { xPx, yPx } = from === frame ? place : unsteadied(camera, frame, steadied(camera, from, place));
      return { x: xPx, y: yPx };
    };
    const span = spans.findLast(({ first, last }) => frame >= first && frame <= last);
    const end = span === undefined ? 0 : 1 + (extent === 'whole' ? span.last : frame);
    const line =
      span === undefined ? [] : Array.from({ length: end - span.first }, (_, i) => placeOver(span.first + i));
    return { line, now: placeOver(frame) };
  };
}
