import type { GreyPicture } from '../picture/picture.ts';
import { ellipseOf } from './ellipse.ts';
import { type FittedDisc, fitRings } from './fitRings.ts';
import { RadialProfile } from './radialProfile.ts';
import { type Rings, readRings, rimOnly } from './rings.ts';
import type { DiscShape } from './shape.ts';

/** A disc as it was learnt: its circles, and where it is in the picture it was learnt from. */
export type LearntDisc = FittedDisc & { readonly rings: Rings };

const rounds = 4;

/**
 * Learns a disc from a picture and a circle that is about its rim, or about one of its inner circles: the circle is
 * centred, the disc's circles are read from how brightness changes about that centre, and both are made exact in turn.
 * Null when no disc shows.
 */
export function learnDisc(picture: GreyPicture, about: DiscShape): LearntDisc | null {
  const reachPx = Math.max(3, about.radiusPx * 0.08);
  let shape = fitRings(picture, about, { rings: rimOnly, windowsPx: [reachPx, reachPx / 2] })?.shape ?? about;
  let learnt: LearntDisc | null = null;
  for (let round = 0; round < rounds; round += 1) {
    const profile = new RadialProfile({ rays: 72, radiusPx: shape.radiusPx });
    profile.add(picture, shape);
    const read = readRings(profile);
    if (!read) return learnt;
    const windowPx = round === 0 ? reachPx : Math.max(2, reachPx / 2);
    const fitted = fitRings(
      picture,
      { ...shape, radiusPx: read.radiusPx },
      { rings: read.rings, windowsPx: [windowPx, 2] },
    );
    if (!fitted) return learnt;
    shape = fitted.shape;
    if (round === rounds - 2 && fitted.coverage > 0.7)
      shape = { ...(ellipseOf(profile, { rings: read.rings, base: shape }) ?? shape), radiusPx: shape.radiusPx };
    learnt = { ...fitted, rings: read.rings };
  }
  return learnt;
}
