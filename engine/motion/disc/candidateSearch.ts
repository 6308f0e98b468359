import type { PointPx } from '../../recording/recording.ts';
import type { GreyPicture } from '../picture/picture.ts';
import { faceEvenness } from './faceEvenness.ts';
import { findCircles, findMoving, type SearchPicture, searchPictureOf } from './findCircles.ts';
import { type LearntDisc, learnDisc } from './learnDisc.ts';
import { learnOblique } from './learnOblique.ts';
import { type DiscShape, isOblique, liesWithin, roundDisc } from './shape.ts';

/** Searches come at the first frame, then at this spacing, then ever more seldom while nothing moves. */
const spacingS = 0.4;
const evenSearches = 4;
/** Rims that move are told from those that stand by a picture kept at this spacing, at least so much earlier. */
const keptEveryS = 0.3;
const earlierByS = 0.2;

const leastCoverage = { round: 0.85, oblique: 0.6 } as const;
/** Edge points scatter more on a larger, softer disc. */
const largestSpread = { px: 1.1, share: 0.016 };

/** A disc that is turned stays upright in the picture but for the camera's own lean and its looking down. */
const largestLeanRad = (25 * Math.PI) / 180;
const leastRatio = 0.45;
/** How many of the strongest moving rims are looked at closely. */
const mostRims = 40;
/** So many radii of a doubted disc a challenger has at least; so many are taken up at a time. */
const clearlyLarger = 1.15;
const mostChallengers = 3;
/** So much of a face looks the same all round, at least. */
const leastEvenness = 0.6;

/** What is followed already and not found again; nothing within a `sure` disc is looked for. */
export type Known = { readonly shape: DiscShape; readonly sure: boolean };

export type Looking = {
  readonly atS: number;
  readonly cameraShift: PointPx;
  readonly around: readonly Known[];
  /** A disc that was chosen and is in doubt: what moves and is clearly larger is looked for, and nothing else. */
  readonly doubted: { readonly shape: DiscShape } | null;
};

/** A picture as it is searched: when it was, and how far the background has moved since the first. */
type Kept = { readonly seen: SearchPicture; readonly atS: number; readonly cameraShift: PointPx };

/** Looks for discs that may be followed: round ones anywhere, and those at any turn where something moves. */
export class CandidateSearch {
  #searches = 0;
  #dueAtS: number | null = null;
  #kept: readonly Kept[] = [];

  /** What is found in the next picture, if a search is due. */
  next(picture: GreyPicture, looking: Looking): LearntDisc[] {
    const { atS, cameraShift } = looking;
    const last = this.#kept.at(-1);
    const due = atS >= (this.#dueAtS ?? atS);
    if (!due && last !== undefined && atS - last.atS < keptEveryS) return [];
    const now = { seen: searchPictureOf(picture), atS, cameraShift };
    const found = due ? this.#search(picture, now, looking) : [];
    this.#kept = last === undefined ? [now] : [last, now];
    return found;
  }

  /** What moves in a picture against an earlier one and may be a disc. */
  moving(picture: GreyPicture, { atS, cameraShift, around }: Looking): LearntDisc[] {
    return this.#movingIn(picture, { seen: searchPictureOf(picture), atS, cameraShift }, around);
  }

  #search(picture: GreyPicture, now: Kept, { around, doubted }: Looking): LearntDisc[] {
    this.#searches += 1;
    this.#dueAtS = now.atS + spacingS * Math.max(1, this.#searches / evenSearches);
    if (doubted !== null) return this.#challengers(picture, now, { around, doubted });
    const found: LearntDisc[] = [];
    for (const circle of findCircles(now.seen, 10)) {
      const learnt = learnDisc(picture, roundDisc(circle.xPx, circle.yPx, circle.radiusPx));
      if (!learnt || !isSound(learnt, leastCoverage.round)) continue;
      // The hub, a collar, a letter: what lies within a disc that is followed is part of it.
      const known = [...around, ...found.map(newlyKnown)];
      if (!known.some(({ shape }) => liesWithin(learnt.shape, shape))) found.push(learnt);
    }
    return [...found, ...this.#movingIn(picture, now, [...around, ...found.map(newlyKnown)])];
  }

  #challengers(
    picture: GreyPicture,
    now: Kept,
    { around, doubted }: { readonly around: readonly Known[]; readonly doubted: { readonly shape: DiscShape } },
  ): LearntDisc[] {
    const larger = (shape: DiscShape) => shape.radiusPx > clearlyLarger * doubted.shape.radiusPx;
    return this.#movingIn(picture, now, around)
      .filter(({ shape }) => larger(shape))
      .slice(0, mostChallengers);
  }

  #movingIn(picture: GreyPicture, { seen, atS, cameraShift }: Kept, around: readonly Known[]): LearntDisc[] {
    const earlier = this.#kept.findLast((one) => atS - one.atS >= earlierByS);
    if (earlier === undefined) return [];
    const before = {
      picture: earlier.seen.small,
      shiftXPx: (cameraShift.xPx - earlier.cameraShift.xPx) / seen.factor,
      shiftYPx: (cameraShift.yPx - earlier.cameraShift.yPx) / seen.factor,
    };
    const known = [...around];
    const found: LearntDisc[] = [];
    for (const rim of findMoving(seen, before, mostRims)) {
      const learnt = learnOblique(picture, rim);
      if (!learnt || !isSound(learnt, leastCoverage.oblique) || !mayBeDisc(learnt.shape)) continue;
      if (known.some((other) => sameDisc(learnt.shape, other))) continue;
      if ((faceEvenness(picture, learnt.shape) ?? 0) < leastEvenness) continue;
      found.push(learnt);
      known.push(newlyKnown(learnt));
    }
    return found;
  }
}

const newlyKnown = ({ shape }: LearntDisc): Known => ({ shape, sure: false });

function isSound({ coverage, spreadPx, shape }: LearntDisc, least: number): boolean {
  return coverage >= least && spreadPx <= Math.max(largestSpread.px, largestSpread.share * shape.radiusPx);
}

/** The bar lies level, so a turned disc's longest diameter stands upright. */
function mayBeDisc({ axisRatio, majorAxisRad }: DiscShape): boolean {
  if (axisRatio < leastRatio) return false;
  return axisRatio > 0.9 || Math.abs(Math.cos(majorAxisRad)) < Math.sin(largestLeanRad);
}

/** Whether a disc is one that is followed already, or a round one's hub or ring. */
function sameDisc(one: DiscShape, { shape: other, sure }: Known): boolean {
  if ((sure || (!isOblique(one) && !isOblique(other))) && liesWithin(one, other)) return true;
  const apart = Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);
  return apart < 0.3 * other.radiusPx && Math.abs(Math.log(one.radiusPx / other.radiusPx)) < 0.12;
}
