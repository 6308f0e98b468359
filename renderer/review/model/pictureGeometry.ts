import { line } from 'd3-shape';
import type { PointPx } from '../../../engine/recording/recording.ts';

/** How the picture lies in the stage: a point p of the stage at scale 1 is seen at p × scale + offset, in CSS pixels. */
export type Zoom = { readonly scale: number; readonly x: number; readonly y: number };
export type Point = { readonly x: number; readonly y: number };
export type Size = { readonly width: number; readonly height: number };

/** The whole picture, as large as the stage allows. */
export const fit: Zoom = { scale: 1, x: 0, y: 0 };

const most = 16;

/** The zoom factor of one key press or click. */
export const zoomStep = Math.SQRT2;

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** Keeps the stage covered: the picture's edge is never drawn inside it. */
const covering = ({ scale, x, y }: Zoom, stage: Size): Zoom => ({
  scale,
  x: clamp(x, stage.width * (1 - scale), 0),
  y: clamp(y, stage.height * (1 - scale), 0),
});

/** Zooms so that what lies under a point of the stage stays under it. */
export function zoomAt(zoom: Zoom, point: Point, factor: number, stage: Size): Zoom {
  const scale = clamp(zoom.scale * factor, 1, most);
  const grown = scale / zoom.scale;
  return covering({ scale, x: point.x - (point.x - zoom.x) * grown, y: point.y - (point.y - zoom.y) * grown }, stage);
}

/** Moves the picture under the stage. */
export const panBy = (zoom: Zoom, by: Point, stage: Size): Zoom =>
  covering({ ...zoom, x: zoom.x + by.x, y: zoom.y + by.y }, stage);

type Box = Size & { readonly left: number; readonly top: number };

/** Screen pixels per pixel of the picture, where the whole picture fits into a box. */
export const pictureScale = (box: Size, picture: Size): number =>
  Math.min(box.width / picture.width, box.height / picture.height);

/** A picture as it lies on the screen: in a mirror, its left is on the right. */
export type SeenPicture = Size & { readonly mirrored?: boolean };

/** The point of the picture, in its pixels, under a point on screen; to a tenth of a pixel. */
export function pictureAt(screen: Point, box: Box, picture: SeenPicture): Point {
  const scale = pictureScale(box, picture);
  const tenth = (value: number): number => Math.round(value * 10) / 10;
  const right = (screen.x - box.left - box.width / 2) / scale;
  return {
    x: tenth((picture.mirrored ? -right : right) + picture.width / 2),
    y: tenth((screen.y - box.top - box.height / 2) / scale + picture.height / 2),
  };
}

const path = line<PointPx | null>()
  .defined((point) => point !== null)
  .x((point) => point?.xPx ?? 0)
  .y((point) => point?.yPx ?? 0)
  .digits(2);

/**
 * SVG path data through the points from one index of a list to another, both included. A stretch that was not seen is a
 * gap; a point alone between gaps is a dot.
 */
export const gappedPath = (points: readonly (PointPx | null)[], first: number, last: number): string =>
  path(points.slice(Math.max(0, first), Math.max(0, last + 1))) ?? '';
