import { asFilmed, type Crop, type Framing, leastSidePx } from '../../../engine/framing/framing.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { Point, Size } from './pictureGeometry.ts';

/** How a clip's picture is kept. */
export const framingOf = ({ framing }: Pick<Clip, 'framing'>): Framing => framing ?? asFilmed;

/** How it shows: while it is being framed all of it does, as bright as the slider says. */
export function shownFraming(
  clip: Pick<Clip, 'framing'>,
  now: { readonly framing: 'on' | 'off'; readonly brightness: number | null },
): Framing {
  const kept = framingOf(clip);
  return now.framing === 'off' ? kept : { ...kept, crop: null, brightness: now.brightness ?? kept.brightness };
}

const within = (value: number, low: number, high: number): number => Math.min(Math.max(Math.round(value), low), high);

/** The part of a picture between two points, in whole pixels, never too small to show. */
export function cropThrough(first: Point, second: Point, { width, height }: Size): Crop {
  const held = ({ x, y }: Point): Point => ({ x: within(x, 0, width), y: within(y, 0, height) });
  const [one, other] = [held(first), held(second)];
  const widthPx = within(Math.abs(one.x - other.x), leastSidePx, width);
  const heightPx = within(Math.abs(one.y - other.y), leastSidePx, height);
  const leftPx = within(Math.min(one.x, other.x), 0, width - widthPx);
  const topPx = within(Math.min(one.y, other.y), 0, height - heightPx);
  return { leftPx, topPx, widthPx, heightPx };
}

/** A part moved within its picture. */
export function movedCrop(crop: Crop, by: Point, { width, height }: Size): Crop {
  return {
    ...crop,
    leftPx: within(crop.leftPx + by.x, 0, width - crop.widthPx),
    topPx: within(crop.topPx + by.y, 0, height - crop.heightPx),
  };
}

/** A part that grows or shrinks about its middle, within its picture. */
export function sizedCrop(crop: Crop, by: Point, size: Size): Crop {
  const widthPx = within(crop.widthPx + 2 * by.x, leastSidePx, size.width);
  const heightPx = within(crop.heightPx + 2 * by.y, leastSidePx, size.height);
  const moved = { ...crop, widthPx, heightPx };
  return movedCrop(moved, { x: (crop.widthPx - widthPx) / 2, y: (crop.heightPx - heightPx) / 2 }, size);
}

/** The part that a key begins with: four fifths of the picture, about its middle. */
export function middleCrop({ width, height }: Size): Crop {
  return cropThrough(
    { x: width / 10, y: height / 10 },
    { x: (9 * width) / 10, y: (9 * height) / 10 },
    { width, height },
  );
}
