import type { PointPx, Sighting } from '../../recording/recording.ts';
import type { GreyPicture } from '../picture/picture.ts';
import { DiscFollower } from './discFollower.ts';
import { EvidenceOfDisc } from './evidence.ts';
import type { LearntDisc } from './learnDisc.ts';
import type { DiscShape } from './shape.ts';

/** Highest and lowest, leftmost and rightmost position. */
type Span = { top: number; bottom: number; left: number; right: number };

/** A candidate as it is followed: what was seen of it, and how far it was carried, without the camera's own movement. */
export class FollowedDisc {
  readonly learnt: LearntDisc;
  readonly firstFrame: number;
  readonly startedS: number;
  readonly sightings: (Sighting | null)[] = [];
  readonly radiiPx: (number | null)[] = [];
  readonly #follower: DiscFollower;
  readonly evidence = new EvidenceOfDisc();
  readonly #span: Span = { top: Infinity, bottom: -Infinity, left: Infinity, right: -Infinity };
  #count = 0;
  #confidence = 0;
  #seenAtS: number;

  constructor(learnt: LearntDisc, { frame, atS }: { readonly frame: number; readonly atS: number }) {
    this.learnt = learnt;
    this.firstFrame = frame;
    this.startedS = atS;
    this.#seenAtS = atS;
    this.#follower = new DiscFollower(learnt, atS);
  }

  /** Looks for it in the next picture. `cameraShift`: how far the background has moved since the first, in pixels. */
  follow(picture: GreyPicture, atS: number, cameraShift: PointPx): void {
    const sighting = this.#follower.follow(picture, atS);
    this.sightings.push(sighting);
    this.radiiPx.push(sighting && this.shape.radiusPx);
    if (!sighting) return;
    this.#count += 1;
    this.#confidence += sighting.confidence;
    this.#seenAtS = atS;
    this.evidence.add(picture, this.#follower, cameraShift.yPx);
    const span = this.#span;
    span.top = Math.min(span.top, sighting.yPx - cameraShift.yPx);
    span.bottom = Math.max(span.bottom, sighting.yPx - cameraShift.yPx);
    span.left = Math.min(span.left, sighting.xPx - cameraShift.xPx);
    span.right = Math.max(span.right, sighting.xPx - cameraShift.xPx);
  }

  get follower(): DiscFollower {
    return this.#follower;
  }

  get shape(): DiscShape {
    return this.#follower.shape;
  }

  /** Seconds since it was last seen. */
  lostForS(atS: number): number {
    return atS - this.#seenAtS;
  }

  /** In how many pictures it was seen. */
  get timesSeen(): number {
    return this.#count;
  }

  /** Share of the pictures it was seen in. */
  get seenShare(): number {
    return this.#count / Math.max(1, this.sightings.length);
  }

  /** Mean confidence over the pictures it was seen in. */
  get confidence(): number {
    return this.#confidence / Math.max(1, this.#count);
  }

  /** How far it was carried, in pixels. */
  get travelPx(): number {
    return this.#count === 0 ? 0 : Math.hypot(this.riseAndFallPx, this.#span.right - this.#span.left);
  }

  /** How far apart its highest and its lowest position are, in pixels. */
  get riseAndFallPx(): number {
    return this.#count === 0 ? 0 : this.#span.bottom - this.#span.top;
  }

  /** Size by how surely and how often it was seen. */
  get worth(): number {
    return this.shape.radiusPx * (this.#confidence / Math.max(1, this.sightings.length));
  }
}
