import { brightnessAt, type GreyPicture, isInside } from '../picture/picture.ts';
import type { Rings } from './rings.ts';
import { type DiscShape, rimPx } from './shape.ts';

const rays = 24;
const directions = Array.from({ length: rays }, (_, ray) => (2 * Math.PI * ray) / rays);

/**
 * Looks for a disc of known circles within a distance of a place, on a grid: gives the best places first, at most three.
 * For a disc that moved further than a fit can follow.
 */
export function searchNear(picture: GreyPicture, about: DiscShape, rings: Rings, reachPx: number): DiscShape[] {
  const stepPx = Math.max(1.5, about.radiusPx * 0.05);
  const count = Math.ceil(reachPx / stepPx);
  const tried: { readonly shape: DiscShape; readonly likeness: number }[] = [];
  for (let row = -count; row <= count; row += 1) {
    for (let column = -count; column <= count; column += 1) {
      if (row * row + column * column > count * count) continue;
      const shape = { ...about, xPx: about.xPx + column * stepPx, yPx: about.yPx + row * stepPx };
      tried.push({ shape, likeness: likenessAt(picture, shape, rings) });
    }
  }
  tried.sort((one, other) => other.likeness - one.likeness);
  const best: DiscShape[] = [];
  for (const { shape, likeness } of tried) {
    if (best.length >= 3 || likeness <= 0) break;
    const apart = (other: DiscShape) => Math.hypot(other.xPx - shape.xPx, other.yPx - shape.yPx);
    if (best.every((other) => apart(other) > 3 * stepPx)) best.push(shape);
  }
  return best;
}

/** Mean change of brightness across the circles, in their sense, no single place counting for much. */
function likenessAt(picture: GreyPicture, shape: DiscShape, rings: Rings): number {
  const off = Math.max(1.5, shape.radiusPx * 0.03);
  let sum = 0;
  for (const directionRad of directions) {
    const rim = rimPx(shape, directionRad);
    const across = Math.cos(directionRad);
    const down = Math.sin(directionRad);
    for (const { share, sign } of rings) {
      const outPx = rim * share + off;
      if (!isInside(picture, shape.xPx + across * outPx, shape.yPx + down * outPx)) continue;
      const inPx = rim * share - off;
      const change =
        brightnessAt(picture, shape.xPx + across * outPx, shape.yPx + down * outPx) -
        brightnessAt(picture, shape.xPx + across * inPx, shape.yPx + down * inPx);
      sum += Math.min(40, sign === 0 ? Math.abs(change) : Math.max(-40, change * sign));
    }
  }
  return sum / (rays * rings.length);
}
