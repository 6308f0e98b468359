import type { CameraPath, PointPx } from '../../../engine/motion/recording.ts';

/** The part of a camera's path that says how the picture moved. */
export type CameraMoves = Pick<CameraPath, 'moves' | 'removable' | 'frames'>;
type Laid = CameraPath['frames'][number];

const still: Laid = { shiftXPx: 0, shiftYPx: 0, turnDeg: 0, scale: 1 };

const laidOf = (camera: CameraMoves | null, frame: number): Laid =>
  (camera?.moves === true && camera.removable ? camera.frames[frame] : undefined) ?? still;

/** Where a place of a frame lies in the clip's first frame, with the camera's movement taken out. */
export function inFirstFrame({ xPx, yPx }: PointPx, camera: CameraMoves | null, frame: number): PointPx {
  const { shiftXPx, shiftYPx, turnDeg, scale } = laidOf(camera, frame);
  const turn = (turnDeg * Math.PI) / 180;
  const [cos, sin] = [scale * Math.cos(turn), scale * Math.sin(turn)];
  return { xPx: cos * xPx - sin * yPx + shiftXPx, yPx: sin * xPx + cos * yPx + shiftYPx };
}

/** The SVG transform that lays places of the first frame over a later one. */
export function overFrame(camera: CameraMoves | null, frame: number): string {
  const { shiftXPx, shiftYPx, turnDeg, scale } = laidOf(camera, frame);
  const turn = (-turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn) / scale, Math.sin(turn) / scale];
  const [x, y] = [-(cos * shiftXPx - sin * shiftYPx), -(sin * shiftXPx + cos * shiftYPx)];
  return `matrix(${cos} ${sin} ${-sin} ${cos} ${x} ${y})`;
}
