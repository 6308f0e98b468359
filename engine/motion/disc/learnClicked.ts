import type { PointPx } from '../../recording/recording.ts';
import type { DiscBox } from '../../recording/setUp.ts';
import type { GreyPicture } from '../picture/picture.ts';
import { findAround, findCircles, searchPictureOf } from './findCircles.ts';
import { type LearntDisc, learnDisc } from './learnDisc.ts';
import { learnOblique } from './learnOblique.ts';
import { type DiscShape, isOblique, roundDisc } from './shape.ts';

const leastCoverage = 0.5;
/** A click counts for a disc when it lies within this share of its radius from its centre. */
const withinShare = 0.6;
/** By how much a disc may be larger or smaller than it was drawn (logarithm of the ratio). */
const drawnWithin = 0.2;
const boxWithin = 0.3;
/** Of the rims at any turn so many are looked at. */
const mostRims = 60;
/** Boxes whose sides differ by less are round for the eye. */
const squareBox = 0.85;

/** What the coach showed of a disc: a place near its middle, perhaps its radius, or a box round it. */
export type ShownDisc = {
  readonly at: PointPx;
  readonly radiusPx?: number | undefined;
  readonly box?: DiscBox | undefined;
};

/**
 * Learns the disc that was clicked: of the rims round the click the one that shows best, the larger before the smaller, so
 * that a click anywhere near the middle snaps to the disc, seen square on or from beside its axis. With a radius or a box,
 * the disc of about that size. Null when no rim shows there.
 */
export function learnClicked(picture: GreyPicture, shown: ShownDisc): LearntDisc | null {
  const found = [...learnRound(picture, shown), ...learnTurned(picture, shown)];
  let best: LearntDisc | null = null;
  for (const learnt of found) {
    if (learnt.coverage < leastCoverage || !isShown(learnt.shape, shown)) continue;
    if (!best || worthOf(learnt) > worthOf(best)) best = learnt;
  }
  return best;
}

function learnRound(picture: GreyPicture, { at, radiusPx, box }: ShownDisc): LearntDisc[] {
  const shortSide = Math.min(picture.width, picture.height);
  const guessed = box ? (box.rightPx - box.leftPx + box.bottomPx - box.topPx) / 4 : radiusPx;
  const radii = guessed === undefined ? [0.05, 0.08, 0.12, 0.18, 0.26].map((share) => share * shortSide) : [guessed];
  const starts = [
    ...findCircles(searchPictureOf(picture), 24).filter((circle) => near(circle, at, circle.radiusPx)),
    ...radii.map((radius) => ({ ...at, radiusPx: radius })),
  ];
  return starts
    .map((start) => learnDisc(picture, roundDisc(start.xPx, start.yPx, start.radiusPx)))
    .filter((learnt) => learnt !== null);
}

function learnTurned(picture: GreyPicture, { at, box }: ShownDisc): LearntDisc[] {
  const starts: DiscShape[] = [
    ...(box ? [boxed(box)] : []),
    ...findAround(searchPictureOf(picture), { at, withinShare }, mostRims),
  ];
  return starts
    .map((start) => learnOblique(picture, start))
    .filter((learnt) => learnt !== null)
    .filter(({ shape }) => isOblique(shape));
}

/** The ellipse that fills a box. */
function boxed({ leftPx, topPx, rightPx, bottomPx }: DiscBox): DiscShape {
  const wide = (rightPx - leftPx) / 2;
  const high = (bottomPx - topPx) / 2;
  return {
    xPx: (leftPx + rightPx) / 2,
    yPx: (topPx + bottomPx) / 2,
    radiusPx: Math.max(wide, high),
    axisRatio: Math.max(0.45, Math.min(wide, high) / Math.max(wide, high)),
    majorAxisRad: high >= wide ? Math.PI / 2 : 0,
  };
}

/** Whether a disc is the one that was shown: near the click, and about as large as it was drawn. */
function isShown(shape: DiscShape, { at, radiusPx, box }: ShownDisc): boolean {
  if (!near(shape, at, shape.radiusPx)) return false;
  if (box) {
    const drawn = boxed(box);
    const turned = Math.abs(Math.log(shape.axisRatio / drawn.axisRatio)) <= (drawn.axisRatio > squareBox ? 1 : 0.5);
    return turned && Math.abs(Math.log(shape.radiusPx / drawn.radiusPx)) <= boxWithin;
  }
  return radiusPx === undefined || Math.abs(Math.log(shape.radiusPx / radiusPx)) <= drawnWithin;
}

const near = (one: PointPx, other: PointPx, radiusPx: number): boolean =>
  Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx) <= withinShare * radiusPx;

/** How much of the rim shows counts most: half a rim is worth less than a whole one of half the size. */
const worthOf = ({ coverage, spreadPx, shape }: LearntDisc): number =>
  (coverage ** 3 / (1 + spreadPx * spreadPx)) * Math.sqrt(shape.radiusPx);
