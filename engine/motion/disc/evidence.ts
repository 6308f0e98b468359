import type { DiscEvidence } from '../../recording/recording.ts';
import type { GreyPicture } from '../picture/picture.ts';
import type { DiscFollower } from './discFollower.ts';
import { faceEvenness } from './faceEvenness.ts';

/** The face is looked at in every so many pictures. */
const faceEvery = 4;

/** Gathers, while a disc is followed, what speaks for its being one. */
export class EvidenceOfDisc {
  #count = 0;
  #rimShare = 0;
  #scatter = 0;
  #radius = 0;
  #radiusSquared = 0;
  #faces = 0;
  #evenness = 0;
  #top = Number.POSITIVE_INFINITY;
  #bottom = Number.NEGATIVE_INFINITY;

  /** Takes a picture in which the disc was seen. `cameraDownPx`: how far down the background has moved since the first. */
  add(picture: GreyPicture, { shape, fit }: DiscFollower, cameraDownPx: number): void {
    if (this.#count % faceEvery === 0) {
      const evenness = faceEvenness(picture, shape);
      if (evenness !== null) {
        this.#faces += 1;
        this.#evenness += evenness;
      }
    }
    this.#count += 1;
    this.#rimShare += Math.min(1, fit.coverage);
    this.#scatter += fit.spreadPx / shape.radiusPx;
    this.#radius += shape.radiusPx;
    this.#radiusSquared += shape.radiusPx ** 2;
    this.#top = Math.min(this.#top, shape.yPx - cameraDownPx);
    this.#bottom = Math.max(this.#bottom, shape.yPx - cameraDownPx);
  }

  /** Share of the face that looks the same all round, 0-1; 0 before it was seen. */
  get evenness(): number {
    return this.#faces === 0 ? 0 : this.#evenness / this.#faces;
  }

  /** Share of the rim that showed, on average; 0 before it was seen. */
  get rimShare(): number {
    return this.#count === 0 ? 0 : this.#rimShare / this.#count;
  }

  /** Null before it was seen. `circles`: how many circles of its own the disc has within its rim. */
  result(circles: number): DiscEvidence | null {
    if (this.#count === 0) return null;
    const radiusPx = this.#radius / this.#count;
    const variance = Math.max(0, this.#radiusSquared / this.#count - radiusPx * radiusPx);
    return {
      rimShare: this.rimShare,
      scatterShare: this.#scatter / this.#count,
      evenness: this.evenness,
      circles,
      radiusSpreadShare: Math.sqrt(variance) / radiusPx,
      travelRadii: (this.#bottom - this.#top) / radiusPx,
    };
  }
}
