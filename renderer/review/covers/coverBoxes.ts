import type { Box } from '../../../engine/covers/cover.ts';
import type { Point } from '../../../engine/review/drawings/drawing.ts';
import type { Size } from '../model/pictureGeometry.ts';

/** The shortest side that a box can be given, in pixels of the picture. */
export const leastSidePx = 8;

const within = (value: number, most: number): number => Math.min(Math.max(0, Math.round(value)), most);

/** The box between two corners, in whole pixels and within the picture. */
export function boxThrough(one: Point, other: Point, { width, height }: Size): Box {
  const [left, right] = [within(Math.min(one.x, other.x), width), within(Math.max(one.x, other.x), width)];
  const [top, bottom] = [within(Math.min(one.y, other.y), height), within(Math.max(one.y, other.y), height)];
  return { leftPx: left, topPx: top, widthPx: Math.max(1, right - left), heightPx: Math.max(1, bottom - top) };
}

/** Moves a box by whole pixels; its middle stays within the picture. */
export function movedBox(box: Box, by: Point, { width, height }: Size): Box {
  const middle = {
    x: within(box.leftPx + box.widthPx / 2 + by.x, width),
    y: within(box.topPx + box.heightPx / 2 + by.y, height),
  };
  return around(middle, Math.round(box.widthPx), Math.round(box.heightPx));
}

/** Grows a box about its middle by a number of pixels, never below a visible size. */
export function sizedBox(box: Box, by: Point, { width, height }: Size): Box {
  const middle = { x: box.leftPx + box.widthPx / 2, y: box.topPx + box.heightPx / 2 };
  const side = (now: number, more: number, most: number) =>
    Math.min(Math.max(leastSidePx, Math.round(now + more)), most);
  return around(middle, side(box.widthPx, by.x, width), side(box.heightPx, by.y, height));
}

/** A box whose lower right corner is dragged to a point; the upper left one stays. */
export function draggedCorner(box: Box, corner: Point): Box {
  return {
    ...box,
    widthPx: Math.max(leastSidePx, Math.round(corner.x - box.leftPx)),
    heightPx: Math.max(leastSidePx, Math.round(corner.y - box.topPx)),
  };
}

/** The box that a key places: a sixth of the picture, in its middle. */
export function middleBox({ width, height }: Size): Box {
  const side = Math.max(leastSidePx, Math.round(Math.min(width, height) / 6));
  return around({ x: width / 2, y: height / 2 }, side, side);
}

/** How far a key moves a box. */
export const keyStepPx = ({ width, height }: Size): number => Math.max(1, Math.round(Math.max(width, height) / 160));

export const boxHolds = ({ leftPx, topPx, widthPx, heightPx }: Box, { x, y }: Point): boolean =>
  x >= leftPx && y >= topPx && x <= leftPx + widthPx && y <= topPx + heightPx;

const around = ({ x, y }: Point, widthPx: number, heightPx: number): Box => ({
  leftPx: Math.round(x - widthPx / 2),
  topPx: Math.round(y - heightPx / 2),
  widthPx,
  heightPx,
});
