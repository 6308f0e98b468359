import type { GreyPicture } from '../picture/picture.ts';
import { edgePoints } from './edgePoints.ts';
import { fitEllipse } from './fitEllipse.ts';
import type { FittedDisc } from './fitRings.ts';
import { rimOnly } from './rings.ts';
import type { DiscShape } from './shape.ts';

/** A lip's inner edge lies so far within the rim: by these shares larger rims are tried. */
const growths = [1.03, 1.05, 1.07] as const;
/** The rim shows along so much of its circumference … */
const leastCoverage = 0.75;
/** … by edges so strong beside those of the circle within it: the bright seam of a sharpened picture is weaker. */
const leastStrength = 0.5;
const hold = 0.05;

/**
 * The rim round a circle that was taken for it, such as the inner edge of a lip: a little larger, and nearly as plain. Null
 * when there is none, as with the rim itself.
 */
export function outerRim(picture: GreyPicture, shape: DiscShape): FittedDisc | null {
  const windowPx = Math.max(1.2, 0.016 * shape.radiusPx);
  const inner = strengthOf(picture, shape, windowPx);
  for (const growth of growths) {
    const start = { ...shape, radiusPx: shape.radiusPx * growth };
    const outer = strengthOf(picture, start, windowPx);
    if (!outer || outer.fitted.coverage < leastCoverage) continue;
    if (outer.fitted.shape.radiusPx < shape.radiusPx * 1.015 + 0.3) continue;
    if (inner && outer.strength < leastStrength * inner.strength) continue;
    return outer.fitted;
  }
  return null;
}

function strengthOf(
  picture: GreyPicture,
  start: DiscShape,
  windowPx: number,
): { readonly fitted: FittedDisc; readonly strength: number } | null {
  edgePoints.strength.fill(0);
  const fitted = fitEllipse(picture, start, { rings: rimOnly, windowsPx: [windowPx, windowPx], hold });
  if (!fitted) return null;
  const strengths = edgePoints.strength.filter((strength) => strength > 0).sort();
  return { fitted, strength: strengths[strengths.length >> 1] ?? 0 };
}
