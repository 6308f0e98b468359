import { describe, expect, it } from 'vitest';
import { RadialProfile } from '../../../../engine/motion/disc/radialProfile.ts';
import { rimInLight } from '../../../../engine/motion/disc/rimInLight.ts';
import { readRings } from '../../../../engine/motion/disc/rings.ts';
import { roundDisc } from '../../../../engine/motion/disc/shape.ts';
import { drawn } from './drawDisc.ts';

const radiusPx = 40.3;
const lightOf = (brightness: number) => (brightness / 255) ** 2.2;

/** A disc whose edge a lens has blurred: light goes over from one to the other evenly about the rim. */
const blurred = (inside: number, outside: number) =>
  drawn({ width: 160, height: 160 }, (xPx, yPx) => {
    const share = 1 / (1 + Math.exp(-(Math.hypot(xPx - 80.2, yPx - 79.7) - radiusPx) / 0.6));
    return 255 * (lightOf(inside) * (1 - share) + lightOf(outside) * share) ** (1 / 2.2);
  });

function read(inside: number, outside: number): { readonly byBrightness: number; readonly byLight: number } {
  const about = roundDisc(80.2, 79.7, radiusPx);
  const brightness = new RadialProfile({ rays: 72, radiusPx });
  const light = new RadialProfile({ rays: 72, radiusPx, of: 'light' });
  for (const profile of [brightness, light]) profile.add(blurred(inside, outside), about);
  const rim = readRings(brightness);
  if (!rim) throw new Error('no rim was read');
  return { byBrightness: rim.radiusPx, byLight: rim.radiusPx * rimInLight(light, brightness, rim) };
}

describe('a blurred rim', () => {
  it.each([
    ['of a dark disc before a bright wall', 40, 150],
    ['of a bright disc before a dark wall', 150, 40],
  ])('%s is read where it is, by light, and on its darker side by brightness', (_, inside, outside) => {
    const { byBrightness, byLight } = read(inside, outside);
    expect(Math.abs(byLight - radiusPx)).toBeLessThan(0.1);
    expect(Math.abs(byBrightness - radiusPx)).toBeGreaterThan(0.2);
  });
});
