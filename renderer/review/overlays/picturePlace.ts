import type { Point } from '../../../engine/review/drawings/drawing.ts';
import type { Size } from '../stage/zoom.ts';

type Box = Size & { readonly left: number; readonly top: number };

/** Screen pixels a pixel of the picture takes, where the picture fits into a box whole. */
export const pictureScale = (box: Size, picture: Size): number =>
  Math.min(box.width / picture.width, box.height / picture.height);

/** The place in the picture, in its pixels, under a place on screen; to a tenth of a pixel. */
export function pictureAt(screen: Point, box: Box, picture: Size): Point {
  const scale = pictureScale(box, picture);
  const tenth = (value: number): number => Math.round(value * 10) / 10;
  return {
    x: tenth((screen.x - box.left - box.width / 2) / scale + picture.width / 2),
    y: tenth((screen.y - box.top - box.height / 2) / scale + picture.height / 2),
  };
}
