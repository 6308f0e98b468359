import type { GreyPicture } from '../picture/picture.ts';
import { fitEllipse } from './fitEllipse.ts';
import type { LearntDisc } from './learnDisc.ts';
import { outerRim } from './outerRim.ts';
import { RadialProfile } from './radialProfile.ts';
import { readRings, rimOnly, ringsOfFace } from './rings.ts';
import type { DiscShape } from './shape.ts';

const rounds = 3;
/** What shows less of its rim at the first fit is not looked at any closer. */
const leastCoverage = 0.45;
/** How firmly size and axes are held from one fit to the next while they are sought. */
const hold = 0.01;

/**
 * Learns a disc that is seen from beside its axis, from an ellipse that is about its rim: the rim with axes of its own,
 * then the disc's circles as they lie in its plane, in turn. Null when no disc shows.
 */
export function learnOblique(picture: GreyPicture, about: DiscShape): LearntDisc | null {
  const reachPx = Math.max(3, about.radiusPx * 0.1);
  let learnt: LearntDisc | null = null;
  const first = fitEllipse(picture, about, { rings: rimOnly, windowsPx: [reachPx, reachPx / 2, 2.2], hold });
  if (!first || first.coverage < leastCoverage) return null;
  let { shape } = first;
  for (let round = 0; round < rounds; round += 1) {
    const profile = new RadialProfile({ rays: 72, radiusPx: shape.radiusPx });
    profile.add(picture, shape);
    const read = readRings(profile);
    if (!read) return learnt;
    const rings = ringsOfFace(read.rings, shape);
    const fitted = fitEllipse(
      picture,
      { ...shape, radiusPx: read.radiusPx },
      { rings, windowsPx: [Math.max(2.2, reachPx / 2), 2], hold },
    );
    if (!fitted) return learnt;
    shape = fitted.shape;
    learnt = { ...fitted, rings };
    // The inner edge of a lip is often plainer than the rim.
    shape = outerRim(picture, shape)?.shape ?? shape;
  }
  return learnt;
}
