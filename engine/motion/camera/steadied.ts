import type { CameraPath, PointPx } from '../../recording/recording.ts';
import { inverseOf, moved, type Similarity, unmoved } from './similarity.ts';

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

/** Where a place of a frame lies in the first frame. */
export const steadied = (camera: CameraMoves | null, frame: number, at: PointPx): PointPx =>
  moved(ontoFirst(camera, frame), at);

/** Where a place of the first frame lies in another. */
export const unsteadied = (camera: CameraMoves | null, frame: number, at: PointPx): PointPx =>
  moved(inverseOf(ontoFirst(camera, frame)), at);
