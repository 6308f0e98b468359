import type { PointPx } from '../../recording/recording.ts';
import type { GreyPicture } from '../picture/picture.ts';
import { findCircles } from './findCircles.ts';
import { type LearntDisc, learnDisc } from './learnDisc.ts';
import { roundDisc } from './shape.ts';

const leastCoverage = 0.5;
/** A click counts for a disc when it lies within this share of its radius from its centre. */
const withinShare = 0.6;

/**
 * Learns the disc that was clicked: of the circles round the click the one whose rim shows best, the larger before the
 * smaller, so that a click anywhere near the middle snaps to the disc. With a radius, the disc of about that size. Null when no rim
 * shows there.
 */
export function learnClicked(picture: GreyPicture, at: PointPx, radiusPx: number | undefined): LearntDisc | null {
  const shortSide = Math.min(picture.width, picture.height);
  const radii = radiusPx === undefined ? [0.05, 0.08, 0.12, 0.18, 0.26].map((share) => share * shortSide) : [radiusPx];
  const starts = [
    ...findCircles(picture, 24).filter((circle) => near(circle, at, circle.radiusPx)),
    ...radii.map((radius) => ({ ...at, radiusPx: radius })),
  ];
  let best: LearntDisc | null = null;
  for (const start of starts) {
    const learnt = learnDisc(picture, roundDisc(start.xPx, start.yPx, start.radiusPx));
    if (!learnt || learnt.coverage < leastCoverage || !near(learnt.shape, at, learnt.shape.radiusPx)) continue;
    if (radiusPx !== undefined && Math.abs(Math.log(learnt.shape.radiusPx / radiusPx)) > 0.2) continue;
    if (!best || worthOf(learnt) > worthOf(best)) best = learnt;
  }
  return best;
}

const near = (one: PointPx, other: PointPx, radiusPx: number): boolean =>
  Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx) <= withinShare * radiusPx;

/** How much of the rim shows counts most: half a rim is worth less than a whole one of half the size. */
const worthOf = ({ coverage, spreadPx, shape }: LearntDisc): number =>
  (coverage ** 3 / (1 + spreadPx * spreadPx)) * Math.sqrt(shape.radiusPx);
