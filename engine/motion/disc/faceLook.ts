import { brightnessAt, type GreyPicture } from '../picture/picture.ts';
import { type DiscShape, rimPx } from './shape.ts';

const rays = 20;
const shares = [0.42, 0.5, 0.58, 0.66, 0.74, 0.82];
const directions = Array.from({ length: rays }, (_, ray) => (2 * Math.PI * ray) / rays);
/** Below this likeness (zero-mean normalised cross-correlation) the face has turned or is covered, and has no say. */
const leastLikeness = 0.6;
/** How far off a second place is tried, in pixels, and by how much more alike it must be to disagree. */
const offPx = 2;
const leastDifference = 0.08;

/** What a disc's face looks like: marks and lettering; not the hub, which stands out of the face and moves against it. A second opinion on where the disc is, beside its circles. */
export class FaceLook {
  readonly #first: Float64Array;

  constructor(picture: GreyPicture, shape: DiscShape) {
    this.#first = lookOf(picture, shape);
  }

  /**
   * Whether the face is where the circles say: `disagrees` when it is clearly more alike two pixels off, `silent` when it
   * can't tell, as for a disc that has turned about its axle.
   */
  opinion(picture: GreyPicture, shape: DiscShape): 'agrees' | 'disagrees' | 'silent' {
    const here = this.#likeness(picture, shape);
    let best = here;
    for (const [across, down] of neighbours) {
      const off = { ...shape, xPx: shape.xPx + across * offPx, yPx: shape.yPx + down * offPx };
      best = Math.max(best, this.#likeness(picture, off));
    }
    if (best < leastLikeness) return 'silent';
    return best > here + leastDifference ? 'disagrees' : 'agrees';
  }

  #likeness(picture: GreyPicture, shape: DiscShape): number {
    const here = lookOf(picture, shape);
    let sum = 0;
    for (let index = 0; index < here.length; index += 1) sum += (here[index] ?? 0) * (this.#first[index] ?? 0);
    return sum;
  }
}

const neighbours: readonly (readonly [across: number, down: number])[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
];

/** Brightness over the face, its mean taken off, its size made one. */
function lookOf(picture: GreyPicture, shape: DiscShape): Float64Array {
  const look = new Float64Array(rays * shares.length);
  let mean = 0;
  directions.forEach((directionRad, ray) => {
    const rim = rimPx(shape, directionRad);
    const across = Math.cos(directionRad) * rim;
    const down = Math.sin(directionRad) * rim;
    shares.forEach((share, ring) => {
      const value = brightnessAt(picture, shape.xPx + across * share, shape.yPx + down * share);
      look[ray * shares.length + ring] = value;
      mean += value / look.length;
    });
  });
  let squares = 0;
  for (const value of look) squares += (value - mean) ** 2;
  const size = Math.sqrt(squares);
  return size < 1 ? look.fill(0) : look.map((value) => (value - mean) / size);
}
