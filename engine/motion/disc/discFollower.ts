import type { Outline, Sighting } from '../../recording/recording.ts';
import type { GreyPicture } from '../picture/picture.ts';
import { AxesMean } from './axesMean.ts';
import { ellipseOf } from './ellipse.ts';
import { FaceLook } from './faceLook.ts';
import { findLike, searchPictureOf } from './findCircles.ts';
import { fitEllipse } from './fitEllipse.ts';
import { confidenceOf, type FittedDisc, fitRings } from './fitRings.ts';
import type { LearntDisc } from './learnDisc.ts';
import { outerRim } from './outerRim.ts';
import { doubtOf } from './outlineDoubt.ts';
import { RadialProfile } from './radialProfile.ts';
import { rimInLight } from './rimInLight.ts';
import { type Rings, readRings, rimOnly, ringsOfFace } from './rings.ts';
import { searchNear } from './searchNear.ts';
import { type DiscShape, isOblique } from './shape.ts';
import { sizeHalfWay } from './sizeHalfWay.ts';

/** A disc that shows less of its circumference than this does not count as seen. */
const leastCoverage = 0.45;
const largestSpread = { px: 0.95, share: 0.016 };
/** A disc keeps its size to within this share while it moves. */
const largestGrowth = 0.12;
/** How many pictures after the first its circles are read anew, when more of the background has averaged away. */
const readAnewAt = [8, 24, 72];

/** The axes of a disc that is seen from beside its axis are fitted at every so many pictures … */
const turnEvery = 3;
/** … held as firmly as this beside the edge points … */
const turnHold = 0.1;
/** … and follow what was fitted by this share. */
const turnShare = 0.2;

/** Where the face contradicts the circles, the position is only half as sure. */
const doubtShare = 0.5;
/** The face is asked at every so many pictures. */
const opinionEvery = 4;

/** Follows one disc from picture to picture, whichever way time runs. */
export class DiscFollower {
  #profile: RadialProfile;
  #light: RadialProfile;
  #face: FaceLook | undefined;
  #doubted = false;
  #rings: Rings;
  #shape: DiscShape;
  #usualRadiusPx: number;
  #seenAtS: number;
  #speed: { readonly x: number; readonly y: number } = { x: 0, y: 0 };
  #missed = 0;
  #picturesSeen = 0;
  /** Size by the rim as it was first read, and place, of every picture it was seen in. */
  readonly #sizes: { readonly yPx: number; readonly radiusPx: number }[] = [];
  #fitted: { readonly coverage: number; readonly spreadPx: number };
  readonly #axes = new AxesMean();
  /** Rim as it is read now / rim as it was first read. */
  #rimGrowth = 1;

  constructor(learnt: LearntDisc, atS: number) {
    this.#fitted = learnt;
    this.#rings = learnt.rings;
    this.#shape = learnt.shape;
    this.#usualRadiusPx = learnt.shape.radiusPx;
    this.#seenAtS = atS;
    this.#profile = new RadialProfile({ rays: 72, radiusPx: learnt.shape.radiusPx });
    this.#light = lightProfile(learnt.shape.radiusPx);
  }

  /** Where the disc was when it was last seen. */
  get shape(): DiscShape {
    return this.#shape;
  }

  get rings(): Rings {
    return this.#rings;
  }

  /** How well it fitted when it was last seen. */
  get fit(): { readonly coverage: number; readonly spreadPx: number } {
    return this.#fitted;
  }

  /** How many pictures in a row it has not been seen in. */
  get missed(): number {
    return this.#missed;
  }

  /** Looks for the disc in the next picture; null when it can't be seen there. */
  follow(picture: GreyPicture, atS: number): Sighting | null {
    const passedS = atS - this.#seenAtS;
    const expected = {
      ...this.#shape,
      xPx: this.#shape.xPx + this.#speed.x * passedS,
      yPx: this.#shape.yPx + this.#speed.y * passedS,
    };
    const found = this.#find(picture, expected, passedS);
    if (!found) {
      this.#missed += 1;
      // A speed that led nowhere leads further astray with every picture.
      if (this.#missed > 2) this.#speed = { x: 0, y: 0 };
      return null;
    }
    this.#fitted = found;
    this.#accept(picture, found, atS);
    this.#face ??= new FaceLook(picture, found.shape);
    if (this.#picturesSeen % opinionEvery === 0)
      this.#doubted = this.#face.opinion(picture, found.shape) === 'disagrees';
    const doubt = this.#doubted ? doubtShare : 1;
    return { xPx: found.shape.xPx, yPx: found.shape.yPx, confidence: doubt * confidenceOf(found) };
  }

  #find(picture: GreyPicture, expected: DiscShape, passedS: number): FittedDisc | null {
    // Mostly the disc is where it is expected, and a narrow look is enough.
    const close = this.#fit(picture, expected, [2.4]);
    if (close && close.coverage > 0.85) {
      const offPx = Math.hypot(close.shape.xPx - expected.xPx, close.shape.yPx - expected.yPx);
      if (offPx < 0.5) return close;
      if (offPx < 1.2) return this.#fit(picture, close.shape, [2.2]) ?? close;
    }
    const near = this.#fit(picture, expected, [Math.max(3, expected.radiusPx * 0.1), 2.2]);
    if (near && near.coverage > 0.7) return near;
    // As far as gravity could have carried it since, and no less than a third of its size.
    const reachPx = Math.min(expected.radiusPx * 1.2, expected.radiusPx * (0.35 + 10 * passedS * passedS));
    let best = near;
    for (const about of [expected, this.#shape]) {
      for (const place of searchNear(picture, about, this.#rings, reachPx)) {
        const fitted = this.#fit(picture, place, [Math.max(3, place.radiusPx * 0.08), 2.2]);
        if (fitted && fitted.coverage > (best?.coverage ?? 0) + 0.05) best = fitted;
      }
    }
    if (best) return best;
    return this.#missed >= 8 && this.#missed % 8 === 0 ? this.#findAnywhere(picture) : null;
  }

  #findAnywhere(picture: GreyPicture): FittedDisc | null {
    let best: FittedDisc | null = null;
    for (const circle of findLike(searchPictureOf(picture), this.#shape, 8)) {
      const place = { ...this.#shape, xPx: circle.xPx, yPx: circle.yPx };
      const fitted = this.#fit(picture, place, [Math.max(3, place.radiusPx * 0.1), 2.2]);
      if (fitted && fitted.coverage > Math.max(0.7, best?.coverage ?? 0)) best = fitted;
    }
    return best;
  }

  #fit(picture: GreyPicture, start: DiscShape, windowsPx: readonly number[]): FittedDisc | null {
    const from = { ...start, radiusPx: this.#usualRadiusPx };
    const fitted = fitRings(picture, from, { rings: this.#rings, windowsPx, usualRadiusPx: this.#usualRadiusPx });
    if (
      !fitted ||
      fitted.coverage < leastCoverage ||
      fitted.spreadPx > Math.max(largestSpread.px, largestSpread.share * fitted.shape.radiusPx)
    )
      return null;
    return Math.abs(fitted.shape.radiusPx / this.#usualRadiusPx - 1) <= largestGrowth ? fitted : null;
  }

  #accept(picture: GreyPicture, { shape, coverage }: FittedDisc, atS: number): void {
    const passedS = atS - this.#seenAtS;
    if (passedS !== 0 && this.#missed === 0) {
      this.#speed = { x: (shape.xPx - this.#shape.xPx) / passedS, y: (shape.yPx - this.#shape.yPx) / passedS };
    }
    this.#missed = 0;
    this.#seenAtS = atS;
    this.#shape = shape;
    this.#usualRadiusPx += (shape.radiusPx - this.#usualRadiusPx) * 0.05;
    this.#picturesSeen += 1;
    if (coverage > 0.7) this.#sizes.push({ yPx: shape.yPx, radiusPx: shape.radiusPx / this.#rimGrowth });
    if (coverage > 0.7 && this.#isOfUse()) {
      this.#profile.add(picture, shape);
      this.#light.add(picture, shape);
    }
    if (readAnewAt.includes(this.#picturesSeen)) {
      this.#readAnew();
      this.#growToRim(picture);
    }
    if (coverage > 0.7 && this.#picturesSeen % turnEvery === 0 && isOblique(shape)) this.#turn(picture);
  }

  /** Lets the axes follow a disc that turns towards the camera or away from it. */
  #turn(picture: GreyPicture): void {
    const fitted = fitEllipse(picture, this.#shape, { rings: this.#rings, windowsPx: [2.2], hold: turnHold });
    if (!fitted || fitted.coverage < 0.7) return;
    const { axisRatio, majorAxisRad } = this.#shape;
    const turnRad = Math.atan(Math.tan(fitted.shape.majorAxisRad - majorAxisRad));
    this.#axes.add(fitted.shape);
    this.#shape = {
      ...this.#shape,
      axisRatio: axisRatio + turnShare * (fitted.shape.axisRatio - axisRatio),
      majorAxisRad: majorAxisRad + turnShare * turnRad,
    };
  }

  /** Every picture at first, then ever fewer: a background averages away by its changing, not by the count. */
  #isOfUse(): boolean {
    const every = this.#picturesSeen < 24 ? 1 : this.#picturesSeen < 120 ? 4 : 12;
    return this.#picturesSeen % every === 0;
  }

  #readAnew(): void {
    const read = readRings(this.#profile);
    if (!read) return;
    const growth = read.radiusPx / this.#profile.radiusPx;
    if (Math.abs(growth - 1) > 0.05) return;
    this.#rings = ringsOfFace(read.rings, this.#shape);
    this.#usualRadiusPx *= growth;
    this.#rimGrowth *= growth;
    const base = { ...this.#shape, radiusPx: this.#shape.radiusPx * growth };
    const axes = isOblique(base) ? null : ellipseOf(this.#profile, { rings: relative(read.rings, growth), base });
    this.#shape = axes ?? base;
    this.#profile = new RadialProfile({ rays: 72, radiusPx: this.#usualRadiusPx });
    this.#light = lightProfile(this.#usualRadiusPx);
  }

  /** Takes the rim for what was followed, where that was a circle within it. */
  #growToRim(picture: GreyPicture): void {
    const outer = isOblique(this.#shape) ? outerRim(picture, this.#shape) : null;
    if (!outer) return;
    const growth = outer.shape.radiusPx / this.#shape.radiusPx;
    const within = this.#rings.filter(({ sign }) => sign !== 0);
    this.#rings = [...relative(within, 1 / growth), ...rimOnly];
    this.#usualRadiusPx *= growth;
    this.#rimGrowth *= growth;
    this.#shape = outer.shape;
    this.#profile = new RadialProfile({ rays: 72, radiusPx: this.#usualRadiusPx });
    this.#light = lightProfile(this.#usualRadiusPx);
  }

  /** The rim as it stands in the picture, from all that was seen of it. */
  outline(): Outline {
    const read = readRings(this.#profile);
    const growth = read ? read.radiusPx / this.#profile.radiusPx : 1;
    const sound = Math.abs(growth - 1) <= 0.05 ? growth : 1;
    const rings = relative(read?.rings ?? this.#rings, sound);
    const { axisRatio, majorAxisRad } =
      this.#axes.mean ?? ellipseOf(this.#profile, { rings, base: this.#shape }) ?? this.#shape;
    const radiusPx = sizeHalfWay(this.#sizes) ?? this.#usualRadiusPx / this.#rimGrowth;
    const rim = { radiusPx: this.#profile.radiusPx * sound, rings: read?.rings ?? this.#rings };
    // The outline of a turned disc is its side wall's too: no edge that stands alone.
    const inLight = isOblique({ axisRatio }) ? 1 : rimInLight(this.#light, this.#profile, rim);
    const half = Math.PI;
    return {
      radiusPx: radiusPx * this.#rimGrowth * sound * inLight,
      ...doubtOf({ radiusPx, axisRatio }),
      axisRatio,
      majorAxisDeg: ((((majorAxisRad % half) + half) % half) * 180) / half,
    };
  }
}

/** The changes of light over a disc. */
const lightProfile = (radiusPx: number) => new RadialProfile({ rays: 72, radiusPx, of: 'light' });

/** Circles relative to the profile's radius, which is not quite that of the rim. */
function relative(rings: Rings, growth: number): Rings {
  return rings.map((ring) => ({ ...ring, share: ring.share * growth }));
}
