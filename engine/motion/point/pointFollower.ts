import type { PointPx, Sighting } from '../../recording/recording.ts';
import { brightnessAt, type GreyPicture, isInside } from '../picture/picture.ts';

/** A look is a square of this many samples a side … */
const side = 21;
/** … that spans this share of the picture's short side, at least its samples in pixels. */
const spanShare = 0.045;
/**
 * A point is lost below a likeness (zero-mean normalised cross-correlation) that is this far below its usual one, or below
 * the least one; what was lost must come back more alike than that.
 */
const likenessNeeded = {
  seen: { belowUsual: 0.15, least: 0.55 },
  lost: { belowUsual: 0.1, least: 0.8 },
} as const;
/** The first look counts, and the latest is taken over, only while they are this like. */
const soundLikeness = 0.8;
/** Share of the newest likeness in the usual one. */
const newestShare = 0.1;
/** A point is looked for within so many sides of its square, further with every picture in which it is lost. */
const reachSides = { seen: 0.8, lost: 3 } as const;
/** The largest turn tried at first from one picture to the next, in radians. */
const turnStepRad = 0.06;

type Look = Float64Array;

/**
 * Follows a clicked point by its looks from picture to picture, whichever way time runs: where the square round it is most
 * like the one that was clicked, turned as the point turns, or, as it changes, like the one seen last.
 */
export class PointFollower {
  readonly #first: Look;
  readonly #stepPx: number;
  #latest: Look;
  #position: PointPx;
  #turnRad = 0;
  #usualLikeness = 1;
  #speed: { readonly x: number; readonly y: number } = { x: 0, y: 0 };
  #seenAtS: number;
  #missed = 0;

  constructor(picture: GreyPicture, at: PointPx, atS: number) {
    this.#stepPx = Math.max(1, (Math.min(picture.width, picture.height) * spanShare) / side);
    this.#position = at;
    this.#seenAtS = atS;
    this.#first = this.#lookAt(picture, { ...at, turnRad: 0 });
    this.#latest = this.#first;
  }

  /** How many pictures in a row it has not been seen in. */
  get missed(): number {
    return this.#missed;
  }

  /** Looks for the point in the next picture; null when nothing there is like it. */
  follow(picture: GreyPicture, atS: number): Sighting | null {
    const passedS = atS - this.#seenAtS;
    const expected = {
      xPx: this.#position.xPx + this.#speed.x * passedS,
      yPx: this.#position.yPx + this.#speed.y * passedS,
    };
    const found = this.#search(picture, expected, this.#latest);
    // The first look does not creep; the latest one does, a little with every picture.
    const anchored = found && this.#refine(picture, { ...found.at, turnRad: this.#turnRad }, this.#first, turning);
    const best = anchored && anchored.likeness > soundLikeness ? anchored : found;
    if (!best || best.likeness < this.#leastLikeness()) {
      this.#missed += 1;
      if (this.#missed > 2) this.#speed = { x: 0, y: 0 };
      return null;
    }
    const { xPx, yPx, turnRad } = best.at;
    if (passedS !== 0 && this.#missed === 0) {
      this.#speed = { x: (xPx - this.#position.xPx) / passedS, y: (yPx - this.#position.yPx) / passedS };
    }
    this.#missed = 0;
    this.#usualLikeness += (best.likeness - this.#usualLikeness) * newestShare;
    this.#position = { xPx, yPx };
    if (best === anchored) this.#turnRad = turnRad;
    this.#seenAtS = atS;
    if (best.likeness > soundLikeness) this.#latest = this.#lookAt(picture, { xPx, yPx, turnRad: 0 });
    return { xPx, yPx, confidence: Math.max(0, Math.min(1, best.likeness)) };
  }

  #leastLikeness(): number {
    const { belowUsual, least } = likenessNeeded[this.#missed === 0 ? 'seen' : 'lost'];
    return Math.max(least, this.#usualLikeness - belowUsual);
  }

  #search(picture: GreyPicture, about: PointPx, look: Look): Found | null {
    const reach = this.#stepPx * side * Math.min(reachSides.lost, reachSides.seen * (1 + this.#missed));
    let best: Found | null = null;
    const stepPx = 2 * this.#stepPx;
    for (let down = -reach; down <= reach; down += stepPx) {
      for (let across = -reach; across <= reach; across += stepPx) {
        const at = { xPx: about.xPx + across, yPx: about.yPx + down, turnRad: 0 };
        const likeness = this.#likeness(picture, at, look);
        if (!best || likeness > best.likeness) best = { at, likeness };
      }
    }
    return best && best.likeness > likenessNeeded.seen.least - 0.25
      ? this.#refine(picture, best.at, look, shifting)
      : null;
  }

  /** Climbs to the most alike place, in ever smaller steps of the given kinds. */
  #refine(picture: GreyPicture, start: Placed, look: Look, steps: readonly Step[]): Found | null {
    let best: Found = { at: start, likeness: this.#likeness(picture, start, look) };
    for (let stepPx = this.#stepPx; stepPx > 0.03; stepPx /= 2) {
      for (let moved = true; moved; ) {
        moved = false;
        for (const [across, down, turn] of steps) {
          const at = {
            xPx: best.at.xPx + across * stepPx,
            yPx: best.at.yPx + down * stepPx,
            turnRad: best.at.turnRad + (turn * turnStepRad * stepPx) / this.#stepPx,
          };
          const likeness = this.#likeness(picture, at, look);
          if (likeness <= best.likeness + 1e-9) continue;
          best = { at, likeness };
          moved = true;
        }
      }
    }
    return best.likeness >= likenessNeeded.seen.least ? best : null;
  }

  #lookAt(picture: GreyPicture, { xPx, yPx, turnRad }: Placed): Look {
    const cosine = Math.cos(turnRad);
    const sine = Math.sin(turnRad);
    const look = new Float64Array(side * side);
    const half = (side - 1) / 2;
    let mean = 0;
    for (let index = 0; index < look.length; index += 1) {
      const across = ((index % side) - half) * this.#stepPx;
      const down = (Math.floor(index / side) - half) * this.#stepPx;
      const value = brightnessAt(picture, xPx + across * cosine - down * sine, yPx + across * sine + down * cosine);
      look[index] = value;
      mean += value / look.length;
    }
    let squares = 0;
    for (let index = 0; index < look.length; index += 1) {
      const off = (look[index] ?? 0) - mean;
      look[index] = off;
      squares += off * off;
    }
    const size = Math.sqrt(squares);
    return size < side ? look.fill(0) : look.map((off) => off / size);
  }

  #likeness(picture: GreyPicture, at: Placed, look: Look): number {
    if (!isInside(picture, at.xPx, at.yPx)) return -1;
    const here = this.#lookAt(picture, at);
    let sum = 0;
    for (let index = 0; index < here.length; index += 1) sum += (here[index] ?? 0) * (look[index] ?? 0);
    return sum;
  }
}

/** Where a square lies and how far it is turned clockwise from the clicked one. */
type Placed = PointPx & { readonly turnRad: number };
type Found = { readonly at: Placed; readonly likeness: number };
type Step = readonly [across: number, down: number, turn: number];

const shifting: readonly Step[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
];
const turning: readonly Step[] = [...shifting, [0, 0, 1], [0, 0, -1]];
