import { type Box, boxOf, middleOf, presenceOf, sizeOf } from '../../../../engine/motion/joints/bodyBox.ts';
import { jointOf } from '../../../../engine/motion/joints/points.ts';
import { type Body, jointNames, type PointPx } from '../../../../engine/recording/recording.ts';
import type { Crop, Size } from './resample.ts';

/** Joints less sure than this are left out where a body's place and size are asked for. */
const leastConfidence = 0.2;

/** A person is there when the surest joints of trunk and legs are at least so sure, taken together. */
const leastPresence = 0.3;

/** Which way up a crop is given to a network, which knows people that stand, sit and lie, but hardly any on their heads. */
export type WayUp = 'upright' | 'upsideDown';

/** The body that 17 × (y, x, confidence) describe, as shares of the crop's side, in pixels of the picture. */
export function bodyIn(numbers: Float32Array, crop: Crop, wayUp: WayUp = 'upright', start = 0): Body {
  const along = (share: number) => (wayUp === 'upright' ? share : 1 - share);
  return jointNames.map((_, i) => {
    const at = start + 3 * i;
    return {
      xPx: crop.leftPx + along(numbers[at + 1] ?? 0) * crop.sidePx,
      yPx: crop.topPx + along(numbers[at] ?? 0) * crop.sidePx,
      confidence: Math.min(1, Math.max(0, numbers[at + 2] ?? 0)),
    };
  });
}

export const isThere = (body: Body): boolean => presenceOf(body) >= leastPresence && boxOf(body) !== null;

/** Distance from a point to a box, 0 inside. */
export function distanceTo(box: Box, { xPx, yPx }: PointPx): number {
  return Math.hypot(Math.max(box.left - xPx, 0, xPx - box.right), Math.max(box.top - yPx, 0, yPx - box.bottom));
}

/** A crop's side over the size of the body in it. */
const crop = { usual: 1.4, most: 2.2 };
/** After so many seconds a body may have left the usual crop; each second more lets it go so many sizes further. */
const usualForS = 0.15;
const widerInASecond = 1.2;

/**
 * The square to look at for somebody who was seen here so many seconds ago, in whole pixels: a network that rounds otherwise then
 * leads to the same square.
 */
export function cropRound(box: Box, passedS = 0): Crop {
  const wider = widerInASecond * Math.max(0, passedS - usualForS);
  const sidePx = Math.max(1, Math.round(Math.min(crop.most, crop.usual + wider) * sizeOf(box)));
  const { xPx, yPx } = middleOf(box);
  return { leftPx: Math.round(xPx - sidePx / 2), topPx: Math.round(yPx - sidePx / 2), sidePx };
}

/** A body fits its crop when it fills no less than this share of the side, and keeps so far from the crop's edges. */
const fit = { least: 0.5, margin: 0.04 };

/** Whether a crop shows all of a body, large enough to be seen well; what the picture's edge cuts off can't be helped. */
export function fitsCrop(box: Box, { leftPx, topPx, sidePx }: Crop, { width, height }: Size): boolean {
  const margin = fit.margin * sidePx;
  const right = leftPx + sidePx;
  const bottom = topPx + sidePx;
  const isCut =
    (leftPx > 0 && box.left < leftPx + margin) ||
    (topPx > 0 && box.top < topPx + margin) ||
    (right < width && box.right > right - margin) ||
    (bottom < height && box.bottom > bottom - margin);
  return !isCut && sizeOf(box) >= fit.least * sidePx;
}

/** The smallest square that holds the whole picture, in the middle of it. */
export function wholePicture({ width, height }: Size): Crop {
  const sidePx = Math.max(width, height);
  return { leftPx: (width - sidePx) / 2, topPx: (height - sidePx) / 2, sidePx };
}

/** On the head: shoulders this far below the hips and knees this far above them, in sizes of the body. */
const onHead = { shoulders: 0.15, knees: 0.1 };

/** Which way up a body is to be looked at: turned over when it stands on its hands or hangs by its knees. */
export function wayUpOf(body: Body): WayUp {
  const box = boxOf(body);
  const [shoulders, hips, knees] = (['shoulder', 'hip', 'knee'] as const).map((part) => heightOf(body, part));
  if (box === null || shoulders === undefined || hips === undefined || knees === undefined) return 'upright';
  const below = (shoulders - hips) / sizeOf(box);
  const above = (hips - knees) / sizeOf(box);
  return below > onHead.shoulders && above > onHead.knees ? 'upsideDown' : 'upright';
}

/** The picture's row of the middle of two joints; NaN when one of them is not seen. */
function heightOf(body: Body, part: 'shoulder' | 'hip' | 'knee'): number {
  const [left, right] = [jointOf(body, part, 'left'), jointOf(body, part, 'right')];
  return Math.min(left.confidence, right.confidence) < leastConfidence ? Number.NaN : (left.yPx + right.yPx) / 2;
}
