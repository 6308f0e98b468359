import type { PointPx } from '../../recording/recording.ts';
import type { GreyPicture } from '../picture/picture.ts';
import { ellipseOf } from './ellipse.ts';
import { findCircles, searchPictureOf } from './findCircles.ts';
import { type FittedDisc, fitRings } from './fitRings.ts';
import { RadialProfile } from './radialProfile.ts';
import { type Rings, readRings, rimOnly } from './rings.ts';
import { type DiscShape, roundDisc } from './shape.ts';

/** A disc as it was learnt: its circles, and where it is in the picture it was learnt from. */
export type LearntDisc = FittedDisc & { readonly rings: Rings };

const rounds = 4;

/**
 * Learns a disc from a picture and a circle that is about its rim, or about one of its inner circles: the circle is
 * centred, the disc's circles are read from how brightness changes about that centre, and both are made exact in turn.
 * Null when no disc shows.
 */
export function learnDisc(picture: GreyPicture, about: DiscShape): LearntDisc | null {
  const reachPx = Math.max(3, about.radiusPx * 0.08);
  let shape = fitRings(picture, about, { rings: rimOnly, windowsPx: [reachPx, reachPx / 2] })?.shape ?? about;
  let learnt: LearntDisc | null = null;
  for (let round = 0; round < rounds; round += 1) {
    const profile = new RadialProfile({ rays: 72, radiusPx: shape.radiusPx });
    profile.add(picture, shape);
    const read = readRings(profile);
    if (!read) return learnt;
    const windowPx = round === 0 ? reachPx : Math.max(2, reachPx / 2);
    const fitted = fitRings(
      picture,
      { ...shape, radiusPx: read.radiusPx },
      { rings: read.rings, windowsPx: [windowPx, 2] },
    );
    if (!fitted) return learnt;
    shape = fitted.shape;
    if (round === rounds - 2 && fitted.coverage > 0.7)
      shape = { ...(ellipseOf(profile, { rings: read.rings, base: shape }) ?? shape), radiusPx: shape.radiusPx };
    learnt = { ...fitted, rings: read.rings };
  }
  return learnt;
}

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
    ...findCircles(searchPictureOf(picture), 24).filter((circle) => near(circle, at, circle.radiusPx)),
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
