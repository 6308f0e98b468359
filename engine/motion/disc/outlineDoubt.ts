import type { Outline } from '../../recording/recording.ts';
import { isOblique } from './shape.ts';

/** Seen square on, a rim's radius is good to this (95 % of the clips with known truth). */
const squareOn = { px: 0.2, share: 0.006 } as const;
/**
 * Half of a thick disc's width by its radius: discs of competition size are up to 62 mm thick and 450 mm wide, so that the
 * outline of one that is turned by an angle is wider than its rim by up to twice this times the sine.
 */
const halfWidthShare = 0.14;
/** An ellipse laid over such an outline is larger than the rim, or smaller where its lip was taken for it, by such a share of that. */
const radiusShare = 0.35;

/** How far radius and axes of an outline may be off. */
export function doubtOf({
  radiusPx,
  axisRatio,
}: Pick<Outline, 'radiusPx' | 'axisRatio'>): Pick<Outline, 'radiusPlusMinusPx' | 'axisRatioPlusMinus'> {
  const squareOnPx = Math.max(squareOn.px, squareOn.share * radiusPx);
  const sine = Math.sqrt(Math.max(0, 1 - axisRatio * axisRatio));
  if (!isOblique({ axisRatio })) return { radiusPlusMinusPx: squareOnPx, axisRatioPlusMinus: 0.01 };
  const sideWall = halfWidthShare * sine;
  return {
    radiusPlusMinusPx: Math.hypot(squareOnPx, radiusShare * sideWall * radiusPx),
    axisRatioPlusMinus: 0.01 + sideWall,
  };
}
