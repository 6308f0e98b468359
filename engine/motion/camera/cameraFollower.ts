import type { CameraPath, PointPx, Upright } from '../../recording/recording.ts';
import { type GreyPicture, shrink } from '../picture/picture.ts';
import { type Patch, pickFaintPatches, pickPatches } from './backgroundPatches.ts';
import { findPatch } from './findPatch.ts';
import { relocated } from './relocate.ts';
import { type Look, roomOfLooks } from './roomOfLooks.ts';
import { after, fitSimilarity, inverseOf, moved, type Pair, type Similarity, unmoved } from './similarity.ts';
import { uprightsOf } from './uprights.ts';

/** Most of the long side of the picture that the background is followed in. */
const longSide = 480;
/** Looked at in each of the first pictures; then, while the camera stands still, at every so many. */
const firstPictures = 8;
const lookEvery = 10;
/** A search through all sizes takes a while; so many are enough for a clip. */
const mostSearches = 10;
/** One lost for more looks is looked for as seldom as one that stands. */
const keepLookingFor = 8;
/** With fewer, there is nothing to lose. */
const leastMarks = 16;
/** New marks are taken when fewer than this share of those taken last are found, and until there are so many. */
const renewShare = 0.6;
const mostMarks = 400;
/** New marks keep clear of old ones. */
const apartPx = 10;
/** A shift of the picture's middle beyond this is a movement, in pixels of the full picture. */
const stillPx = 0.4;

/** A patch has stayed within this share of the picture's long side. */
const stayedShare = 0.25 / 480;
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
  readonly #stayedPx: number;
  readonly #looks: Look[] = [];
  #first: GreyPicture | undefined;
  #marks: Mark[] = [];
  #uprights: readonly Upright[] = [];
  #last: Similarity = unmoved;
  /** What the last step added: the next is likely to be the same. */
  #step: Similarity = unmoved;
  #found = 0;
  #frame = -1;
  #moves = false;
  /** For so many looks the background has been lost, so that nobody knows whether the camera stands. */
  #lostFor = 0;
  #searches = 0;

  constructor(size: { readonly width: number; readonly height: number }) {
    this.#size = size;
    // By whole pixels: any other factor puts each pixel a little off, and so a patch that moves.
    this.#factor = Math.max(1, Math.ceil(Math.max(size.width, size.height) / longSide));
    this.#stayedPx = (stayedShare * Math.max(size.width, size.height)) / this.#factor;
  }

  /** Takes the next picture; gives how far the middle of the background has moved since the first, in pixels. */
  next(picture: GreyPicture): PointPx {
    this.#frame += 1;
    if (this.#frame === 0) this.#uprights = uprightsOf(picture);
    const isDue = this.#frame % lookEvery === 0;
    if (this.#lostFor > keepLookingFor && !isDue) this.#looks.push({ frame: this.#frame, here: null, places: [] });
    else if (this.#frame < firstPictures || this.#moves || this.#lostFor > 0 || isDue) this.#look(picture);
    return this.#shiftAt(this.#last, 0.5, 0.5);
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
    const room = roomOfLooks(this.#looks, {
      ...{ size: this.#size, factor: this.#factor, frames: this.#frame + 1 },
      marks: this.#marks.map(({ at, frame }) => ({ ...at, frame })),
    });
    return { moves, removable, frames, uprights, ...(room && { room }) };
  }

  #look(picture: GreyPicture): void {
    const small = shrink(picture, this.#factor);
    if (!this.#first) {
      // Without shrinking this is the decoder's own memory, which the next picture is written over.
      this.#first = { ...small, data: Uint8Array.from(small.data) };
      this.#marks = marksOf(small, { born: unmoved, frame: this.#frame });
      this.#found = this.#marks.filter(({ kind }) => kind === 'plain').length;
      this.#looks.push({ frame: this.#frame, here: unmoved, places: this.#marks.map(({ at }) => at) });
      return;
    }
    const onward = this.#lostFor > 0 ? this.#last : after(this.#step, this.#last);
    const seen = this.#tryFrom(small, onward) ?? this.#tryFrom(small, this.#last);
    const again = seen ?? this.#relocate(small, this.#first);
    this.#lostFor = again === null && this.#marks.length >= leastMarks ? this.#lostFor + 1 : 0;
    if (!again) {
      this.#looks.push({ frame: this.#frame, here: null, places: [] });
      return;
    }
    this.#moves ||= this.#isMovement(again.here);
    this.#step = seen && this.#moves ? after(again.here, inverseOf(this.#last)) : unmoved;
    this.#last = again.here;
    const places = again.places.map((place, index) => {
      const mark = this.#marks[index];
      return place ?? (mark?.kind === 'faint' && this.#moves ? this.#find(small, mark, again.here) : null);
    });
    this.#marks.forEach((mark, index) => {
      mark.off = offFrom(moved(again.here, mark.at), places[index] ?? null);
    });
    this.#looks.push({ frame: this.#frame, here: again.here, places });
    if (this.#moves) this.#renew(small, again);
  }

  /** Looks for the marks where a similarity puts them; null when they don't agree on where they are. */
  #tryFrom(picture: GreyPicture, expected: Similarity): Agreed | null {
    const places = this.#marks.map((mark) => (mark.kind === 'plain' ? this.#find(picture, mark, expected) : null));
    const pairs = this.#marks.flatMap(({ at }, index) => {
      const to = places[index];
      return to ? [{ from: at, to }] : [];
    });
    if (isStill(pairs, this.#stayedPx)) return { here: unmoved, places, pairs: pairs.length };
    const here = fitSimilarity(pairs, expected)?.similarity;
    return here ? { here, places, pairs: pairs.length } : null;
  }

  #find(picture: GreyPicture, { patch, at, born, off }: Mark, expected: Similarity): PointPx | null {
    const { xPx, yPx } = moved(expected, at);
    const place = { xPx: xPx + (off?.xPx ?? 0), yPx: yPx + (off?.yPx ?? 0) };
    return findPatch(picture, patch, place, after(expected, inverseOf(born)));
  }

  /**
   * Looks for the background further off: as large as it was, then in any size. That takes a while, so a camera that stays
   * lost is looked for ever more seldom.
   */
  #relocate(small: GreyPicture, first: GreyPicture): Agreed | null {
    if (this.#marks.length < leastMarks) return null;
    const search = (sizes: 'same' | 'any') => {
      const found = relocated({ first, now: small, sizes }, this.#last);
      return found && this.#tryFrom(small, found);
    };
    const near = search('same');
    const isPowerOfTwo = (this.#lostFor & (this.#lostFor - 1)) === 0;
    if (near || !isPowerOfTwo || this.#searches >= mostSearches) return near;
    this.#searches += 1;
    return search('any');
  }

  /** Takes new marks where many of the old ones are out of sight. */
  #renew(small: GreyPicture, { here, pairs }: Agreed): void {
    if (pairs >= renewShare * this.#found || this.#marks.length >= mostMarks) return;
    const places = this.#looks.at(-1)?.places ?? [];
    const taken = places.filter((place) => place !== null);
    const fresh = marksOf(small, { born: here, frame: this.#frame }).filter(({ patch }) =>
      taken.every(({ xPx, yPx }) => Math.max(Math.abs(xPx - patch.xPx), Math.abs(yPx - patch.yPx)) > apartPx),
    );
    this.#marks.push(...fresh);
    this.#found = pairs + fresh.filter(({ kind }) => kind === 'plain').length;
  }

  #isMovement(similarity: Similarity): boolean {
    const shift = this.#shiftAt(similarity, 0.5, 0.5);
    if (Math.hypot(shift.xPx, shift.yPx) > stillPx) return true;
    // A turn about the middle, or a zoom, moves what lies around it.
    return [0.2, 0.8].some((across) =>
      [0.2, 0.8].some((down) => {
        const { xPx, yPx } = this.#shiftAt(similarity, across, down);
        return Math.hypot(xPx, yPx) > 3 * stillPx;
      }),
    );
  }

  /** How far a place has moved, in pixels of the full picture; the place in shares of its width and height. */
  #shiftAt(similarity: Similarity, across: number, down: number): PointPx {
    const factor = this.#factor;
    const at = { xPx: (across * this.#size.width) / factor, yPx: (down * this.#size.height) / factor };
    const to = moved(similarity, at);
    return { xPx: (to.xPx - at.xPx) * factor, yPx: (to.yPx - at.yPx) * factor };
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

/** A patch that is followed: where the first picture has it, or would, and how the camera lay when it was taken. */
type Mark = {
  readonly patch: Patch;
  /** Faint patches tell of the room, not whether the camera moves. */
  readonly kind: 'plain' | 'faint';
  readonly at: PointPx;
  readonly born: Similarity;
  readonly frame: number;
  /** How far it was last from where the similarity put it. */
  off: PointPx | null;
};

type Agreed = { readonly here: Similarity; readonly places: readonly (PointPx | null)[]; readonly pairs: number };

function marksOf(picture: GreyPicture, { born, frame }: Pick<Mark, 'born' | 'frame'>): Mark[] {
  const plain = pickPatches(picture);
  const back = inverseOf(born);
  const mark =
    (kind: Mark['kind']) =>
    (patch: Patch): Mark => ({ patch, kind, at: moved(back, patch), born, frame, off: null });
  return [...plain.map(mark('plain')), ...pickFaintPatches(picture, plain).map(mark('faint'))];
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
function isStill(pairs: readonly Pair[], stayedPx: number): boolean {
  const still = pairs.filter(({ from, to }) => Math.hypot(from.xPx - to.xPx, from.yPx - to.yPx) < stayedPx);
  return still.length >= Math.max(leastStill, stillShare * pairs.length);
}
