import type { DiscEvidence, Outline, PointPx, Sighting } from '../../recording/recording.ts';
import type { GreyPicture } from '../picture/picture.ts';
import { CandidateSearch, type Looking } from './candidateSearch.ts';
import { confidenceOf } from './fitRings.ts';
import { FollowedDisc } from './followed.ts';
import type { LearntDisc } from './learnDisc.ts';
import { doubtfulForS, isMover, leastConfidence } from './loadLike.ts';
import { type DiscShape, isOblique, liesWithin } from './shape.ts';

/** How many candidates are followed until one of them has moved. */
const mostFollowed = 8;
/** A larger one that stands still holds the choice up until the mover has gone so many radii. */
const undoubtedTravel = 1.2;
/** A candidate that is lost so long is given up: soon after it was found, later when it has been followed for long. */
const patienceS = { fresh: 0.12, usual: 0.85, chosen: 2 } as const;
const freshForS = 0.5;
/** A round rim that shows so far takes the place of what lies within it: its hub, its collar. */
const wholeRim = 0.85;
/** What is found round a mover has so long to show that it is carried along. */
const confirmS = 0.4;

/** What was chosen with less confidence may have to give way … */
const undoubtedConfidence = 0.75;
/** … to what is worth so many times as much, and has shown within so long that it moves. */
const challengerWorth = 1.25;
const challengeS = 4;

/** What came of following: positions from `firstFrame` on, one a frame, and the rim; `learnt` is how it was at `firstFrame`. */
export type TrackedDisc = {
  readonly firstFrame: number;
  readonly learnt: LearntDisc;
  readonly sightings: readonly (Sighting | null)[];
  readonly radiiPx: readonly (number | null)[];
  readonly outline: Outline;
  readonly evidence: DiscEvidence | null;
};

/**
 * Finds the disc without being told where it is: rims are followed side by side until one of them moves; that is the
 * bar's, those on the rack and at the wall stand still. Of two that move together the larger is the near one.
 */
export class DiscTracker {
  #followed: FollowedDisc[] = [];
  #retired: FollowedDisc[] = [];
  #chosen: FollowedDisc | null = null;
  #confirming: { readonly mover: FollowedDisc; readonly sinceS: number } | null = null;
  #frame = -1;
  readonly #search = new CandidateSearch();

  /** Takes the next picture. `cameraShift`: how far the background has moved since the first, in pixels. */
  next(picture: GreyPicture, atS: number, cameraShift: PointPx): void {
    this.#frame += 1;
    for (const one of this.#followed) one.follow(picture, atS, cameraShift);
    this.#followed = this.#followed.filter((one) => one === this.#chosen || !this.#isGivenUp(one, atS));
    if (this.#chosen === null) {
      this.#choose(picture, atS, cameraShift);
    } else if (this.#chosen.lostForS(atS) > patienceS.chosen) {
      this.#giveUp(this.#chosen);
    } else {
      this.#challenge(this.#chosen, atS);
      // A disc that shows clearly is not doubted, and nothing else is looked for.
      if (this.#chosen.confidence >= undoubtedConfidence) return;
    }
    for (const learnt of this.#search.next(picture, this.#looking(atS, cameraShift)))
      this.#add(learnt, picture, atS, cameraShift);
  }

  #looking(atS: number, cameraShift: PointPx): Looking {
    const around = this.#followed.map((one) => ({ shape: one.shape, sure: one.confidence >= leastConfidence.sure }));
    return { atS, cameraShift, around, doubted: this.#chosen };
  }

  #isGivenUp(one: FollowedDisc, atS: number): boolean {
    const forS = atS - one.startedS;
    const patience = forS < freshForS ? patienceS.fresh : patienceS.usual;
    return one.lostForS(atS) > patience || (this.#chosen !== null && forS > challengeS && !isMover(one));
  }

  /** What shows better than the one that was chosen, and has moved as a load does, takes its place. */
  #challenge(chosen: FollowedDisc, atS: number): void {
    const better = this.#followed.find(
      (one) =>
        one !== chosen &&
        isMover(one) &&
        atS - one.startedS >= doubtfulForS &&
        one.worth > challengerWorth * chosen.worth,
    );
    if (better === undefined) return;
    this.#retired.push(chosen);
    this.#chosen = better;
    this.#followed = [better];
  }

  /** Where the disc is, once one has been chosen; null before. */
  get position(): PointPx | null {
    return this.#chosen ? { xPx: this.#chosen.shape.xPx, yPx: this.#chosen.shape.yPx } : null;
  }

  /** The disc that moved; null when none did. */
  finish(): TrackedDisc | null {
    const movers = [...this.#retired, ...this.#followed].filter(isMover);
    const best = movers.sort((one, other) => other.worth * other.timesSeen - one.worth * one.timesSeen)[0];
    if (!best) return null;
    const { firstFrame, learnt, sightings, radiiPx, follower } = best;
    const evidence = best.evidence.result(follower.rings.length - 1);
    return { firstFrame, learnt, sightings, radiiPx, outline: follower.outline(), evidence };
  }

  #giveUp(lost: FollowedDisc): void {
    this.#retired.push(lost);
    this.#followed = [];
    this.#chosen = null;
    this.#confirming = null;
  }

  #choose(picture: GreyPicture, atS: number, cameraShift: PointPx): void {
    const best = this.#followed.filter(isMover).sort((one, other) => other.worth - one.worth)[0];
    if (!best) return;
    const rivals = this.#followed.some((one) => one.worth > best.worth && !enclosing(one, best));
    if (best.confidence < leastConfidence.sure && atS - best.startedS < doubtfulForS) return;
    if (rivals && best.travelPx < undoubtedTravel * best.shape.radiusPx) return;
    // A hub, a ring, a plate before a larger one move as the disc does: what lies round them is looked for first.
    if (this.#confirming === null) {
      this.#confirming = { mover: best, sinceS: atS };
      for (const learnt of this.#search.moving(picture, this.#looking(atS, cameraShift)))
        this.#add(learnt, picture, atS, cameraShift);
      return;
    }
    if (atS - this.#confirming.sinceS < confirmS) return;
    const whole = this.#followed.filter((one) => enclosing(one, best) && carriedAlong(one, best));
    const chosen = whole.sort((one, other) => other.worth - one.worth)[0] ?? best;
    this.#chosen = chosen;
    this.#followed = [chosen];
  }

  #add(learnt: LearntDisc, picture: GreyPicture, atS: number, cameraShift: PointPx): void {
    const sureness = confidenceOf(learnt);
    if (this.#followed.some((one) => aboutTheSame(one.shape, learnt.shape) && one.confidence >= sureness)) return;
    if (learnt.coverage >= wholeRim && !isOblique(learnt.shape))
      this.#followed = this.#followed.filter(
        (one) => one.confidence > sureness || !liesWithin(one.shape, learnt.shape),
      );
    const started = new FollowedDisc(learnt, { frame: this.#frame, atS });
    started.follow(picture, atS, cameraShift);
    this.#followed.push(started);
    this.#followed.sort((one, other) => other.worth - one.worth);
    if (this.#chosen === null) this.#followed.length = Math.min(this.#followed.length, mostFollowed);
  }
}

/** Whether two rims can't both be right: they lie about each other and are about as large. */
function aboutTheSame(one: DiscShape, other: DiscShape): boolean {
  const apart = Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);
  return apart < 0.35 * other.radiusPx && Math.abs(Math.log(one.radiusPx / other.radiusPx)) < 0.25;
}

/** Whether one lies round another and is clearly larger. */
function enclosing(one: FollowedDisc, inner: FollowedDisc): boolean {
  return one !== inner && one.shape.radiusPx > 1.15 * inner.shape.radiusPx && liesWithin(inner.shape, one.shape);
}

/** Whether one has kept its place beside another since it was found, while both went some way. */
function carriedAlong(one: FollowedDisc, other: FollowedDisc): boolean {
  const offsets: { readonly x: number; readonly y: number }[] = [];
  const delay = one.firstFrame - other.firstFrame;
  one.sightings.forEach((sighting, index) => {
    const beside = other.sightings[index + delay];
    if (sighting && beside) offsets.push({ x: sighting.xPx - beside.xPx, y: sighting.yPx - beside.yPx });
  });
  if (one.seenShare < 0.7 || offsets.length < 3 || one.confidence < leastConfidence.doubtful) return false;
  const spread = (of: readonly number[]) => Math.max(...of) - Math.min(...of);
  const apartPx = Math.hypot(spread(offsets.map(({ x }) => x)), spread(offsets.map(({ y }) => y)));
  return apartPx < 0.15 * one.shape.radiusPx && one.travelPx > 1.5 * apartPx;
}
