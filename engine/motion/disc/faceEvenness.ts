import { brightnessAt, type GreyPicture, isInside } from '../picture/picture.ts';
import { type DiscShape, spokesOf } from './shape.ts';

const spokeCount = 36;
/** The outer part of the face: the hub, a sleeve and the bar lie before its middle. */
const shares = [0.58, 0.66, 0.74, 0.82, 0.9] as const;
/** Brightness that two places of one circle may differ by, in shades. */
const sameShades = 14;
const values = new Float64Array(spokeCount);

/**
 * How nearly a face looks the same all round: the share of its places that are as bright as the middle one of their circle.
 * A disc's marks, a hand or a post before it leave most of it even; a head, a trunk, a piece of wall are not. Null when too
 * little of it lies in the picture.
 */
export function faceEvenness(picture: GreyPicture, shape: DiscShape): number | null {
  const spokes = spokesOf(shape, spokeCount);
  let even = 0;
  let all = 0;
  for (const share of shares) {
    let count = 0;
    for (let spoke = 0; spoke < spokeCount; spoke += 1) {
      const xPx = shape.xPx + (spokes.across[spoke] ?? 0) * shape.radiusPx * share;
      const yPx = shape.yPx + (spokes.down[spoke] ?? 0) * shape.radiusPx * share;
      if (!isInside(picture, xPx, yPx)) continue;
      values[count] = brightnessAt(picture, xPx, yPx);
      count += 1;
    }
    const seen = values.slice(0, count).sort();
    const middle = seen[count >> 1] ?? 0;
    for (const value of seen) if (Math.abs(value - middle) <= sameShades) even += 1;
    all += count;
  }
  return all < (spokeCount * shares.length) / 2 ? null : even / all;
}
