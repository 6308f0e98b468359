import { type Body, jointNames, type PointPx } from '../../recording/recording.ts';

/** Joints less sure than this are left out where a body's place and size are asked for. */
const leastConfidence = 0.2;

const trunkAndLegs = jointNames.flatMap((name, i) => (/Shoulder|Hip|Knee|Ankle/.test(name) ? [i] : []));

/** An upright box in the picture. */
export type Box = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** The upright box round the joints that are sure enough; null when fewer than four are. */
export function boxOf(body: Body): Box | null {
  const sure = body.filter(({ confidence }) => confidence >= leastConfidence);
  if (sure.length < 4) return null;
  const xs = sure.map(({ xPx }) => xPx);
  const ys = sure.map(({ yPx }) => yPx);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

export const sizeOf = (box: Box): number => Math.max(box.right - box.left, box.bottom - box.top);

export const middleOf = (box: Box): PointPx => ({
  xPx: (box.left + box.right) / 2,
  yPx: (box.top + box.bottom) / 2,
});

/** How sure the network is that somebody is there, 0-1: the mean of the six surest of the eight joints of trunk and legs. */
export function presenceOf(body: Body): number {
  const sureness = trunkAndLegs.map((i) => body[i]?.confidence ?? 0).sort((a, b) => b - a);
  return sureness.slice(0, 6).reduce((sum, value) => sum + value, 0) / 6;
}

/**
 * How far a person's box may move and change between two looks, in its sizes: what a network's joints wander from one look to the
 * next, and what somebody who drops under a bar or jumps to one does in a second, with some sway of a hand-held camera.
 */
const wander = { shift: 0.2, ratio: 1.5 };
const inASecond = { shift: 1.2, ratio: 1.5 };

/** Whether a person seen so many seconds later can be the same, by how far the box moved and how its size changed. */
export function canBeSame(before: Box, after: Box, passedS: number): boolean {
  const from = middleOf(before);
  const to = middleOf(after);
  const shift = Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx) / Math.max(1, sizeOf(before), sizeOf(after));
  const ratio = sizeOf(after) / Math.max(1, sizeOf(before));
  const most = wander.ratio + inASecond.ratio * passedS;
  return shift <= wander.shift + inASecond.shift * passedS && ratio < most && ratio > 1 / most;
}

/** How far the joints of two bodies lie apart on average, in the larger one's sizes; endless where too few joints are seen. */
export function apartInSizes(one: Body, other: Body): number {
  const boxes = [boxOf(one), boxOf(other)].filter((box) => box !== null);
  const sizePx = Math.max(...boxes.map(sizeOf));
  const apart = one.flatMap((joint, i) => {
    const same = other[i];
    if (same === undefined || Math.min(joint.confidence, same.confidence) < leastConfidence) return [];
    return [Math.hypot(joint.xPx - same.xPx, joint.yPx - same.yPx)];
  });
  if (boxes.length < 2 || apart.length < 4) return Number.POSITIVE_INFINITY;
  return apart.reduce((sum, px) => sum + px, 0) / apart.length / sizePx;
}

/** Joints of one person lie no further apart than this on average between two looks, in sizes, besides how far they go. */
const jointsWander = 0.15;

/**
 * Whether a body seen so many seconds later can be the same person's: by its box, or by the joints that both looks show, as a
 * box halves when the network loses sight of the legs.
 */
export function canBeSameBody(before: Body, after: Body, passedS: number): boolean {
  const [one, other] = [boxOf(before), boxOf(after)];
  if (one === null || other === null) return false;
  return canBeSame(one, other, passedS) || apartInSizes(before, after) <= jointsWander + inASecond.shift * passedS;
}
