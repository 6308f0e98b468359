import type { DiscShape } from './shape.ts';

type Axes = Pick<DiscShape, 'axisRatio' | 'majorAxisRad'>;

/** The mean of how a disc stood towards the camera, over the pictures it was fitted in. */
export class AxesMean {
  #count = 0;
  #ratio = 0;
  /** Directions that differ by half a turn are the same, so twice the direction is averaged. */
  #along = 0;
  #over = 0;

  add({ axisRatio, majorAxisRad }: Axes): void {
    this.#count += 1;
    this.#ratio += axisRatio;
    this.#along += Math.cos(2 * majorAxisRad);
    this.#over += Math.sin(2 * majorAxisRad);
  }

  /** Null before the first. */
  get mean(): Axes | null {
    if (this.#count === 0) return null;
    return { axisRatio: this.#ratio / this.#count, majorAxisRad: Math.atan2(this.#over, this.#along) / 2 };
  }
}
