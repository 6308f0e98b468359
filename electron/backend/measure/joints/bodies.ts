import { type Body, jointNames, type PointPx } from '../../../../engine/recording/recording.ts';
import type { Crop, Size } from './resample.ts';

/** Joints less sure than this are left out where a body's place and size are asked for. */
const leastConfidence = 0.2;

/** A person is there when the surest joints of trunk and legs are at least so sure, taken together. */
const leastPresence = 0.3;

const trunkAndLegs = jointNames.flatMap((name, i) => (/Shoulder|Hip|Knee|Ankle/.test(name) ? [i] : []));

export type Box = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** The body that 17 × (y, x, confidence) describe, as shares of the crop's side, in pixels of the picture. */
export function bodyIn(numbers: Float32Array, crop: Crop, start = 0): Body {
  return jointNames.map((_, i) => {
    const at = start + 3 * i;
    return {
      xPx: crop.leftPx + (numbers[at + 1] ?? 0) * crop.sidePx,
      yPx: crop.topPx + (numbers[at] ?? 0) * crop.sidePx,
      confidence: Math.min(1, Math.max(0, numbers[at + 2] ?? 0)),
    };
  });
}

/** The upright box round the joints that are sure enough; null when fewer than four are. */
export function boxOf(body: Body): Box | null {
  const sure = body.filter(({ confidence }) => confidence >= leastConfidence);
  if (sure.length < 4) return null;
  const xs = sure.map(({ xPx }) => xPx);
  const ys = sure.map(({ yPx }) => yPx);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

export const sizeOf = (box: Box): number => Math.max(box.right - box.left, box.bottom - box.top);

/** How sure the network is that somebody is there, 0-1: the mean of the six surest of the eight joints of trunk and legs. */
export function presenceOf(body: Body): number {
  const sureness = trunkAndLegs.map((i) => body[i]?.confidence ?? 0).sort((a, b) => b - a);
  return sureness.slice(0, 6).reduce((sum, value) => sum + value, 0) / 6;
}

export const isThere = (body: Body): boolean => presenceOf(body) >= leastPresence && boxOf(body) !== null;

/** Distance from a point to a box, 0 inside. */
export function distanceTo(box: Box, { xPx, yPx }: PointPx): number {
  return Math.hypot(Math.max(box.left - xPx, 0, xPx - box.right), Math.max(box.top - yPx, 0, yPx - box.bottom));
}

/** Whether a body seen a moment later can be the same person's: its middle has not gone further than a third of its size. */
export function canBeSame(earlier: Body, later: Body): boolean {
  const before = boxOf(earlier);
  const after = boxOf(later);
  if (before === null || after === null) return false;
  const shift = Math.hypot(
    (before.left + before.right - after.left - after.right) / 2,
    (before.top + before.bottom - after.top - after.bottom) / 2,
  );
  const ratio = sizeOf(after) / sizeOf(before);
  return shift <= sizeOf(before) / 3 && ratio > 0.55 && ratio < 1.8;
}

/** The square to look at for somebody who was seen here a moment ago: a quarter more than the joints' box on each side. */
export function cropRound(box: Box): Crop {
  const sidePx = 1.4 * sizeOf(box);
  return {
    leftPx: (box.left + box.right - sidePx) / 2,
    topPx: (box.top + box.bottom - sidePx) / 2,
    sidePx,
  };
}

/** The smallest square that holds the whole picture, in the middle of it. */
export function wholePicture({ width, height }: Size): Crop {
  const sidePx = Math.max(width, height);
  return { leftPx: (width - sidePx) / 2, topPx: (height - sidePx) / 2, sidePx };
}
