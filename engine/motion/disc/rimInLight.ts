import type { RadialProfile } from './radialProfile.ts';
import { peaksOf, type Rings } from './rings.ts';

/** Light and brightness change most within so many pixels of each other at one edge, as sharp as lenses make it. */
const mostApartPx = 0.5;
/** A circle so near the rim blends with it, and what they make together tells nothing of either. */
const aloneWithinPx = 6;

/**
 * How much larger or smaller the rim is by light than by brightness on screen, as a factor: a blurred edge lies where light
 * changes most, and brightness changes most on its darker side. 1 where no such edge stands out, or none that is alone.
 */
export function rimInLight(
  light: RadialProfile,
  brightness: RadialProfile,
  { radiusPx, rings }: { readonly radiusPx: number; readonly rings: Rings },
): number {
  const alone = rings.every(({ share, sign }) => sign === 0 || share * radiusPx < radiusPx - aloneWithinPx);
  const byBrightness = alone ? peakNear(brightness, radiusPx) : null;
  const byLight = byBrightness === null ? null : peakNear(light, byBrightness);
  return byLight === null || byBrightness === null ? 1 : byLight / byBrightness;
}

function peakNear(profile: RadialProfile, radiusPx: number): number | null {
  const apart = (peakPx: number) => Math.abs(peakPx - radiusPx);
  const [nearest] = peaksOf(profile.means().unsigned)
    .map((step) => profile.radiusOf(step))
    .sort((one, other) => apart(one) - apart(other));
  return nearest !== undefined && apart(nearest) <= mostApartPx ? nearest : null;
}
