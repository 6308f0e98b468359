import { lightOf } from '../picture/light.ts';
import { brightnessAt, type GreyPicture } from '../picture/picture.ts';
import { type DiscShape, spokesOf } from './shape.ts';

/** Radial steps of a profile, as shares of the rim's radius. */
export const profileFrom = 0.28;
export const profileTo = 1.35;

/**
 * How brightness changes outward over a disc and a little beyond, summed over pictures: what belongs to the disc adds up,
 * the background behind it averages away. One row a spoke, one column a radial step of half a pixel, as of a disc that is
 * seen square on with its longest diameter.
 */
export class RadialProfile {
  readonly rays: number;
  readonly steps: number;
  readonly radiusPx: number;
  readonly #of: 'brightness' | 'light';
  readonly #signed: Float64Array;
  readonly #unsigned: Float64Array;
  #pictures = 0;

  /** `of`: changes of brightness as on screen, unless those of light are asked for. */
  constructor({
    rays,
    radiusPx,
    of = 'brightness',
  }: {
    readonly rays: number;
    readonly radiusPx: number;
    readonly of?: 'brightness' | 'light';
  }) {
    this.rays = rays;
    this.#of = of;
    this.radiusPx = radiusPx;
    this.steps = Math.ceil((profileTo - profileFrom) * radiusPx * 2);
    this.#signed = new Float64Array(rays * this.steps);
    this.#unsigned = new Float64Array(rays * this.steps);
  }

  get pictures(): number {
    return this.#pictures;
  }

  /** Adds a picture in which the disc is where `shape` says. Its radius is brought to that of the profile. */
  add(picture: GreyPicture, shape: DiscShape): void {
    this.#pictures += 1;
    const toRadius = shape.radiusPx / this.radiusPx;
    const spokes = spokesOf(shape, this.rays);
    for (let ray = 0; ray < this.rays; ray += 1) {
      const across = (spokes.across[ray] ?? 0) * toRadius;
      const down = (spokes.down[ray] ?? 0) * toRadius;
      let before = this.#brightness(picture, shape, across, down, -1.5);
      let middle = this.#brightness(picture, shape, across, down, -0.5);
      let after = this.#brightness(picture, shape, across, down, 0.5);
      for (let step = 0; step < this.steps; step += 1) {
        const next = this.#brightness(picture, shape, across, down, step + 1.5);
        const change = next + after - middle - before;
        const at = ray * this.steps + step;
        this.#signed[at] = (this.#signed[at] ?? 0) + change;
        this.#unsigned[at] = (this.#unsigned[at] ?? 0) + Math.abs(change);
        before = middle;
        middle = after;
        after = next;
      }
    }
  }

  #brightness(picture: GreyPicture, { xPx, yPx }: DiscShape, across: number, down: number, step: number): number {
    const outPx = this.radiusOf(step);
    const brightness = brightnessAt(picture, xPx + across * outPx, yPx + down * outPx);
    return this.#of === 'light' ? lightOf(brightness) : brightness;
  }

  /** Distance from the centre of a radial step, in pixels at the profile's radius. */
  radiusOf(step: number): number {
    return profileFrom * this.radiusPx + step / 2;
  }

  /** Mean change of brightness at each step over all directions: with its sign, and without. */
  means(): { readonly signed: Float64Array; readonly unsigned: Float64Array } {
    const signed = new Float64Array(this.steps);
    const unsigned = new Float64Array(this.steps);
    const count = this.rays * Math.max(1, this.#pictures);
    for (let step = 0; step < this.steps; step += 1) {
      let sum = 0;
      let size = 0;
      for (let ray = 0; ray < this.rays; ray += 1) {
        sum += this.#signed[ray * this.steps + step] ?? 0;
        size += this.#unsigned[ray * this.steps + step] ?? 0;
      }
      signed[step] = sum / count;
      unsigned[step] = size / count;
    }
    return { signed, unsigned };
  }

  /** Share of the directions along which the mean change near a step, of a sign, is at least so large. */
  shareOfRays(step: number, { sign, least }: { readonly sign: -1 | 0 | 1; readonly least: number }): number {
    const whole = Math.round(step);
    const source = sign === 0 ? this.#unsigned : this.#signed;
    const needed = least * Math.max(1, this.#pictures);
    let count = 0;
    for (let ray = 0; ray < this.rays; ray += 1) {
      let most = 0;
      for (let near = Math.max(0, whole - 3); near <= Math.min(this.steps - 1, whole + 3); near += 1) {
        const change = source[ray * this.steps + near] ?? 0;
        most = Math.max(most, sign === 0 ? change : change * sign);
      }
      if (most >= needed) count += 1;
    }
    return count / this.rays;
  }

  /** The step with the strongest change of a sign along one direction, between steps by a parabola; null without any. */
  strongestAlong(
    ray: number,
    { aboutPx, reachPx, sign }: { readonly aboutPx: number; readonly reachPx: number; readonly sign: -1 | 0 | 1 },
  ): number | null {
    const source = sign === 0 ? this.#unsigned : this.#signed;
    const changeAt = (step: number) => (source[ray * this.steps + step] ?? 0) * (sign === 0 ? 1 : sign);
    let best = -1;
    let most = 8 * Math.max(1, this.#pictures);
    for (let step = 1; step < this.steps - 1; step += 1) {
      if (Math.abs(this.radiusOf(step) - aboutPx) > reachPx) continue;
      const change = changeAt(step);
      if (change <= most || change < changeAt(step - 1) || change < changeAt(step + 1)) continue;
      most = change;
      best = step;
    }
    if (best < 0) return null;
    const bend = changeAt(best - 1) - 2 * most + changeAt(best + 1);
    return best + (bend < 0 ? (0.5 * (changeAt(best - 1) - changeAt(best + 1))) / bend : 0);
  }
}
