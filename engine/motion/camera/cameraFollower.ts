import type { CameraPath, PointPx, Upright } from '../../recording/recording.ts';
import { type GreyPicture, shrink } from '../picture/picture.ts';
import { type Patch, pickFaintPatches, pickPatches } from './backgroundPatches.ts';
import { findPatch } from './findPatch.ts';
import { type Look, roomOfLooks } from './roomOfLooks.ts';
import { fitSimilarity, inverseOf, moved, type Pair, type Similarity, unmoved } from './similarity.ts';
import { uprightsOf } from './uprights.ts';

/** About the long side of the picture that the background is followed in. */
const longSide = 560;
/** Looked at in each of the first pictures; then, while the camera stands still, at every so many. */
const firstPictures = 8;
const lookEvery = 10;
/** A shift of the picture's middle beyond this is a movement, in pixels of the full picture. */
const stillPx = 0.4;

/** A patch has stayed within this, in pixels of the smaller picture. */
const stayedPx = 0.25;
const stillShare = 0.25;
const leastStill = 6;

/**
 * Follows the background, picture by picture, to tell how the camera moved: textured patches of the first picture are
 * found again, and the similarity that most of them agree on is the camera's. What lies at other distances than most tells how
 * it was shifted in the room.
 */
export class CameraFollower {
  readonly #factor: number;
  readonly #size: { readonly width: number; readonly height: number };
  readonly #looks: Look[] = [];
  #patches: readonly Patch[] | undefined;
  /** Looked for only where the camera moves: they tell of the room, not whether it moves. */
  #faint: readonly Patch[] = [];
  #uprights: readonly Upright[] = [];
  #last: Similarity = unmoved;
  /** How far each patch was from where the similarity put it. */
  #offs: readonly (PointPx | null)[] = [];
  #frame = -1;
  #moves = false;

  constructor(size: { readonly width: number; readonly height: number }) {
    this.#size = size;
    // By whole pixels: any other factor puts each pixel a little off, and so a patch that moves.
    this.#factor = Math.max(1, Math.round(Math.max(size.width, size.height) / longSide));
  }

  /** Takes the next picture; gives how far the middle of the background has moved since the first, in pixels. */
  next(picture: GreyPicture): PointPx {
    this.#frame += 1;
    if (this.#frame === 0) this.#uprights = uprightsOf(picture);
    if (this.#frame < firstPictures || this.#moves || this.#frame % lookEvery === 0) this.#look(picture);
    return this.#shiftOfMiddle(this.#last);
  }

  /** How the camera moved over all pictures taken; between those not looked at, evenly. */
  finish(): CameraPath {
    const uprights = [...this.#uprights];
    const seen = this.#looks.flatMap(({ frame, here }) => (here ? [{ frame, here }] : []));
    const moves = seen.some(({ here }) => this.#isMovement(here));
    // Nothing to hold on to (a black picture, a blank wall) can't tell a camera that moves from one that stands.
    if (!moves) return { moves: false, removable: true, frames: [], uprights };
    const removable = seen.length >= this.#looks.length * 0.9;
    if (!removable) return { moves, removable, frames: [], uprights };
    const frames = this.#framesThrough(seen);
    const room = roomOfLooks(this.#looks, { size: this.#size, factor: this.#factor, frames: this.#frame + 1 });
    return { moves, removable, frames, uprights, ...(room && { room }) };
  }

  #look(picture: GreyPicture): void {
    const small = shrink(picture, this.#factor);
    if (!this.#patches) {
      this.#patches = pickPatches(small);
      this.#faint = pickFaintPatches(small, this.#patches);
      this.#looks.push({ frame: this.#frame, here: unmoved, places: [...this.#patches, ...this.#faint] });
      return;
    }
    const found = this.#patches.map((patch, index) => this.#find(small, patch, index));
    const pairs = this.#patches.flatMap((patch, index) => {
      const to = found[index];
      return to ? [{ from: { xPx: patch.xPx, yPx: patch.yPx }, to }] : [];
    });
    const here = isStill(pairs) ? unmoved : (fitSimilarity(pairs)?.similarity ?? null);
    this.#moves ||= here !== null && this.#isMovement(here);
    if (here) this.#last = here;
    const first = this.#patches.length;
    const faint = this.#moves && here ? this.#faint.map((patch, index) => this.#find(small, patch, first + index)) : [];
    const places = [...found, ...faint];
    this.#looks.push({ frame: this.#frame, here, places });
    if (!here) return;
    this.#offs = [...this.#patches, ...this.#faint].map((patch, index) =>
      offFrom(moved(here, patch), places[index] ?? null),
    );
  }

  #find(picture: GreyPicture, patch: Patch, index: number): PointPx | null {
    const { xPx, yPx } = moved(this.#last, patch);
    const off = this.#offs[index] ?? { xPx: 0, yPx: 0 };
    return findPatch(picture, patch, { xPx: xPx + off.xPx, yPx: yPx + off.yPx }, this.#last);
  }

  #isMovement(similarity: Similarity): boolean {
    const shift = this.#shiftOfMiddle(similarity);
    return Math.hypot(shift.xPx, shift.yPx) > stillPx;
  }

  #shiftOfMiddle(similarity: Similarity): PointPx {
    const middle = { xPx: this.#size.width / this.#factor / 2, yPx: this.#size.height / this.#factor / 2 };
    const to = moved(similarity, middle);
    return { xPx: (to.xPx - middle.xPx) * this.#factor, yPx: (to.yPx - middle.yPx) * this.#factor };
  }

  /** What lays each frame over the first, in pixels of the full picture; between frames looked at, evenly. */
  #framesThrough(seen: readonly Looked[]): CameraPath['frames'] {
    const frames: CameraPath['frames'] = [];
    let next = 0;
    for (let frame = 0; frame <= this.#frame; frame += 1) {
      while (next < seen.length - 1 && (seen[next]?.frame ?? 0) < frame) next += 1;
      const after = seen[next] ?? { frame, here: unmoved };
      const before = after.frame <= frame ? after : (seen[next - 1] ?? after);
      const span = after.frame - before.frame;
      frames.push(this.#laid(inverseOf(mixed(before.here, after.here, span > 0 ? (frame - before.frame) / span : 0))));
    }
    return frames;
  }

  #laid({ a, b, shiftXPx, shiftYPx }: Similarity): CameraPath['frames'][number] {
    return {
      shiftXPx: shiftXPx * this.#factor,
      shiftYPx: shiftYPx * this.#factor,
      turnDeg: (Math.atan2(b, a) * 180) / Math.PI,
      scale: Math.hypot(a, b),
    };
  }
}

type Looked = { readonly frame: number; readonly here: Similarity };

/** The furthest that a patch is carried along from where the similarity puts it. */
const mostOffPx = 12;

function offFrom(expected: PointPx, found: PointPx | null): PointPx | null {
  if (!found) return null;
  const off = { xPx: found.xPx - expected.xPx, yPx: found.yPx - expected.yPx };
  return Math.hypot(off.xPx, off.yPx) <= mostOffPx ? off : null;
}

function mixed(one: Similarity, other: Similarity, share: number): Similarity {
  const mix = (from: number, to: number) => from + (to - from) * share;
  return {
    a: mix(one.a, other.a),
    b: mix(one.b, other.b),
    shiftXPx: mix(one.shiftXPx, other.shiftXPx),
    shiftYPx: mix(one.shiftYPx, other.shiftYPx),
  };
}

/**
 * A camera that moves takes the whole background along. So where a good part of the patches stay, it stands still, and the
 * others are on whoever moves before it, even if these are more.
 */
function isStill(pairs: readonly Pair[]): boolean {
  const still = pairs.filter(({ from, to }) => Math.hypot(from.xPx - to.xPx, from.yPx - to.yPx) < stayedPx);
  return still.length >= Math.max(leastStill, stillShare * pairs.length);
}
