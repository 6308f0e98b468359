import { type CameraMoves, ontoFirst } from '../../../engine/motion/camera/cameraPath.ts';
import { inverseOf } from '../../../engine/motion/camera/similarity.ts';

/** The SVG transform that lays places of the first frame over a later one. */
export function overFrame(camera: CameraMoves | null, frame: number): string {
  const { a, b, shiftXPx, shiftYPx } = inverseOf(ontoFirst(camera, frame));
  return `matrix(${a} ${b} ${-b} ${a} ${shiftXPx} ${shiftYPx})`;
}
