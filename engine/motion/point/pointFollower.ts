import { brightnessAt, isInside } from '../disc/sample.ts';
import type { GreyPicture } from '../picture.ts';
import type { PointPx, Sighting } from '../recording.ts';

/** A look is a square of this many samples a side … */
const side = 21;
/** … that spans this share of the picture's short side, at least its samples in pixels. */
const spanShare = 0.045;
/** Below this likeness (zero-mean normalised cross-correlation) the point is lost. */
const leastLikeness = 0.55;
/** The latest look is taken over only while it is this like the first or the one before. */
const soundLikeness = 0.8;

type Look = Float64Array;

/**
 * Follows a clicked point by its looks from picture to picture, whichever way time runs: where the square round it is most
 * like the one that was clicked, or, as it turns, like the one seen last; between pixels by a parabola each way.
 */
export class PointFollower {
  readonly #first: Look;
  readonly #stepPx: number;
  #latest: Look;
  #place: PointPx;
  #speed: { readonly x: number; readonly y: number } = { x: 0, y: 0 };
  #seenAtS: number;
  #missed = 0;

  constructor(picture: GreyPicture, at: PointPx, atS: number) {
    this.#stepPx = Math.max(1, (Math.min(picture.width, picture.height) * spanShare) / side);
    this.#place = at;
    this.#seenAtS = atS;
    this.#first = this.#lookAt(picture, at);
    this.#latest = this.#first;
  }

  /** How many pictures in a row it has not been seen in. */
  get missed(): number {
    return this.#missed;
  }

  /** Looks for the point in the next picture; null when nothing there is like it. */
  follow(picture: GreyPicture, atS: number): Sighting | null {
    const passedS = atS - this.#seenAtS;
    const expected = { xPx: this.#place.xPx + this.#speed.x * passedS, yPx: this.#place.yPx + this.#speed.y * passedS };
    const found = this.#search(picture, expected, this.#latest);
    if (!found) {
      this.#missed += 1;
      if (this.#missed > 2) this.#speed = { x: 0, y: 0 };
      return null;
    }
    // The first look does not creep; the latest one does, a little with every picture.
    const anchored = this.#refine(picture, found.at, this.#first);
    const best = anchored && anchored.likeness > soundLikeness ? anchored : found;
    if (passedS !== 0 && this.#missed === 0) {
      const { xPx, yPx } = this.#place;
      this.#speed = { x: (best.at.xPx - xPx) / passedS, y: (best.at.yPx - yPx) / passedS };
    }
    this.#missed = 0;
    this.#place = best.at;
    this.#seenAtS = atS;
    if (found.likeness > soundLikeness) this.#latest = this.#lookAt(picture, best.at);
    return { ...best.at, confidence: Math.max(0, Math.min(1, best.likeness)) };
  }

  #search(picture: GreyPicture, about: PointPx, look: Look): Found | null {
    const reach = this.#stepPx * side * (this.#missed === 0 ? 0.8 : 1.6);
    let best: Found | null = null;
    const stepPx = 2 * this.#stepPx;
    for (let down = -reach; down <= reach; down += stepPx) {
      for (let across = -reach; across <= reach; across += stepPx) {
        const at = { xPx: about.xPx + across, yPx: about.yPx + down };
        const likeness = this.#likeness(picture, at, look);
        if (!best || likeness > best.likeness) best = { at, likeness };
      }
    }
    return best && best.likeness > leastLikeness - 0.25 ? this.#refine(picture, best.at, look) : null;
  }

  /** Climbs to the most alike place, in ever smaller steps. */
  #refine(picture: GreyPicture, start: PointPx, look: Look): Found | null {
    let best: Found = { at: start, likeness: this.#likeness(picture, start, look) };
    for (let stepPx = this.#stepPx; stepPx > 0.03; stepPx /= 2) {
      for (let moved = true; moved; ) {
        moved = false;
        for (const [across, down] of neighbours) {
          const at = { xPx: best.at.xPx + across * stepPx, yPx: best.at.yPx + down * stepPx };
          const likeness = this.#likeness(picture, at, look);
          if (likeness <= best.likeness + 1e-9) continue;
          best = { at, likeness };
          moved = true;
        }
      }
    }
    return best.likeness >= leastLikeness ? best : null;
  }

  #lookAt(picture: GreyPicture, { xPx, yPx }: PointPx): Look {
    const look = new Float64Array(side * side);
    const half = (side - 1) / 2;
    let mean = 0;
    for (let index = 0; index < look.length; index += 1) {
      const across = ((index % side) - half) * this.#stepPx;
      const down = (Math.floor(index / side) - half) * this.#stepPx;
      const value = brightnessAt(picture, xPx + across, yPx + down);
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

  #likeness(picture: GreyPicture, at: PointPx, look: Look): number {
    if (!isInside(picture, at.xPx, at.yPx)) return -1;
    const here = this.#lookAt(picture, at);
    let sum = 0;
    for (let index = 0; index < here.length; index += 1) sum += (here[index] ?? 0) * (look[index] ?? 0);
    return sum;
  }
}

type Found = { readonly at: PointPx; readonly likeness: number };

const neighbours: readonly (readonly [across: number, down: number])[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
];
