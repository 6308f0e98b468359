import type { Point } from './pictureGeometry.ts';

/** Where each arrow key points on the screen. */
export const arrowSteps: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** A step on the screen as one on the picture: in a mirror, left and right are exchanged. */
export const asSeen = ({ x, y }: Point, mirrored: boolean): Point => ({ x: mirrored ? -x : x, y });
