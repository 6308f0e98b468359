import type { Outline, PointPx, Sighting } from '../../recording/recording.ts';
import type { GreyPicture } from '../picture/picture.ts';
import { DiscFollower } from './discFollower.ts';
import { findCircles, searchPictureOf } from './findCircles.ts';
import { learnDisc } from './learnDisc.ts';
import { type DiscShape, roundDisc } from './shape.ts';

/** How many circles are followed until one of them has moved. */
const mostFollowed = 4;
/** A disc has moved when it was carried further than this share of its radius, and further than its background. */
const movedShare = 0.45;
const leastLearntCoverage = 0.85;
/** Edge points scatter more on a larger, softer disc. */
const largestLearntSpread = { px: 1.1, share: 0.016 };

/** A head is nearly round too, but its outline fits a circle badly. */
const leastConfidence = 0.6;
/** A larger one that stands still holds the choice up until the mover has gone so many radii. */
const undoubtedTravel = 1.2;

type Followed = {
  readonly follower: DiscFollower;
  readonly firstFrame: number;
  readonly sightings: (Sighting | null)[];
  /** How often it was seen, and how surely in sum. */
  readonly seen: { count: number; confidence: number };
  /** Highest and lowest, leftmost and rightmost position so far, without the camera's own movement. */
  readonly span: { top: number; bottom: number; left: number; right: number };
};

/** What came of following: positions from `firstFrame` on, one a frame, and the rim. */
export type TrackedDisc = {
  readonly firstFrame: number;
  readonly sightings: readonly (Sighting | null)[];
  readonly outline: Outline;
};

/**
 * Finds the disc without being told where it is: circles are followed side by side until one of them moves; that is the
 * bar's, those on the rack and at the wall stand still. Of two that move together the larger is the near one.
 */
export class DiscTracker {
  #followed: Followed[] = [];
  #frame = -1;
  #chosen = false;
  #searches = 0;

  /** Takes the next picture. `cameraShift`: how far the background has moved since the first, in pixels. */
  next(picture: GreyPicture, atS: number, cameraShift: PointPx): void {
    this.#frame += 1;
    for (const one of this.#followed) {
      const sighting = one.follower.follow(picture, atS);
      record(one, sighting);
      if (sighting) widen(one.span, sighting.xPx - cameraShift.xPx, sighting.yPx - cameraShift.yPx);
    }
    if (this.#chosen) return;
    this.#choose();
    if (!this.#chosen && this.#frame >= nextSearchAt(this.#searches)) this.#search(picture, atS, cameraShift);
  }

  /** Where the disc is, once one has been chosen; null before. */
  get position(): PointPx | null {
    const chosen = this.#chosen ? this.#followed[0] : undefined;
    return chosen ? { xPx: chosen.follower.shape.xPx, yPx: chosen.follower.shape.yPx } : null;
  }

  /** The disc that moved; null when none did. */
  finish(): TrackedDisc | null {
    const best = this.#bestMover();
    if (!best) return null;
    return { firstFrame: best.firstFrame, sightings: best.sightings, outline: best.follower.outline() };
  }

  #choose(): void {
    this.#followed = this.#followed.filter(({ follower }) => follower.missed < 25);
    const best = this.#bestMover();
    if (!best) return;
    const rivals = this.#followed.some((one) => worthOf(one) > worthOf(best));
    if (rivals && travelOf(best) < undoubtedTravel * radiusOf(best)) return;
    this.#followed = [best];
    this.#chosen = true;
  }

  #bestMover(): Followed | undefined {
    const moved = this.#followed.filter((one) => hasMoved(one) && confidenceOf(one) >= leastConfidence);
    return moved.sort((one, other) => worthOf(other) - worthOf(one))[0];
  }

  #search(picture: GreyPicture, atS: number, cameraShift: PointPx): void {
    this.#searches += 1;
    for (const circle of findCircles(searchPictureOf(picture), 10)) {
      const learnt = learnDisc(picture, roundDisc(circle.xPx, circle.yPx, circle.radiusPx));
      if (!learnt || learnt.coverage < leastLearntCoverage || learnt.spreadPx > spreadLimit(learnt.shape.radiusPx))
        continue;
      const { xPx, yPx } = learnt.shape;
      // The hub, a collar, a letter: what lies within a disc that is followed is part of it.
      if (this.#followed.some((one) => liesWithin(learnt.shape, one.follower.shape))) continue;
      this.#followed = this.#followed.filter((one) => !liesWithin(one.follower.shape, learnt.shape));
      const span = { top: yPx, bottom: yPx, left: xPx, right: xPx };
      const started: Followed = {
        follower: new DiscFollower(learnt, atS),
        firstFrame: this.#frame,
        sightings: [],
        seen: { count: 0, confidence: 0 },
        span,
      };
      record(started, started.follower.follow(picture, atS));
      span.top = span.bottom = yPx - cameraShift.yPx;
      span.left = span.right = xPx - cameraShift.xPx;
      this.#followed.push(started);
    }
    this.#followed.sort((one, other) => worthOf(other) - worthOf(one));
    this.#followed.length = Math.min(this.#followed.length, mostFollowed);
  }
}

/** Searches come at the first frame, then ever more seldom while nothing moves. */
function nextSearchAt(searches: number): number {
  return searches * 12 * Math.max(1, searches / 4);
}

const spreadLimit = (radiusPx: number): number =>
  Math.max(largestLearntSpread.px, largestLearntSpread.share * radiusPx);

/** Whether one circle lies within another, or is the same. */
function liesWithin(one: DiscShape, other: DiscShape): boolean {
  const apart = Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);
  return apart + one.radiusPx <= other.radiusPx * 1.08;
}

function widen(span: Followed['span'], xPx: number, yPx: number): void {
  span.top = Math.min(span.top, yPx);
  span.bottom = Math.max(span.bottom, yPx);
  span.left = Math.min(span.left, xPx);
  span.right = Math.max(span.right, xPx);
}

const radiusOf = ({ follower }: Followed): number => follower.shape.radiusPx;
const travelOf = ({ span }: Followed): number => Math.hypot(span.bottom - span.top, span.right - span.left);
const hasMoved = (one: Followed): boolean => travelOf(one) > movedShare * radiusOf(one);

function record({ sightings, seen }: Followed, sighting: Sighting | null): void {
  sightings.push(sighting);
  if (!sighting) return;
  seen.count += 1;
  seen.confidence += sighting.confidence;
}

/** Mean confidence over the pictures it was seen in. */
const confidenceOf = ({ seen }: Followed): number => seen.confidence / Math.max(1, seen.count);

/** Size by how surely and how often it was seen. */
const worthOf = (one: Followed): number => radiusOf(one) * (one.seen.confidence / Math.max(1, one.sightings.length));
