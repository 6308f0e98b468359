import type { Body, Sighting } from '../../recording/recording.ts';
import { quantile } from '../signal/quantile.ts';
import { type Bodies, between, distancePx, jointOf, otherSide, type Side } from './points.ts';

/** The confidence from which a joint counts as seen. */
export const leastConfidence = 0.2;

/** Shares of the standing height: trunk, thigh and shank after Drillis & Contini 1966; the neck goes up to the ear. */
const shares = { neck: 0.118, trunk: 0.288, thigh: 0.245, shank: 0.246 } as const;

/**
 * How much of a body must be seen, as a share of its height, for its height to be told: all up to the ears where three bodies
 * show that, else without the head or the shanks, at the least the trunk with the neck or with a thigh.
 */
const enough = [0.89, 0.6, 0.4] as const;
const leastBodies = 3;

/**
 * The lifter's standing height in pixels, from the lengths of the segments, so that it holds in any posture, also where head or
 * legs are cut off or hidden throughout; null when too little is seen. Good to about 10 %.
 */
export function bodyHeightPx({ frames }: Bodies): number | null {
  const bodies = frames.flatMap((body) =>
    body === null ? [] : [[segmentsOf(body, 'left'), segmentsOf(body, 'right')].filter((seen) => seen !== null)],
  );
  for (const least of enough) {
    const heights = bodies.flatMap((sides) => {
      const told = sides.filter(({ share }) => share >= least).map(({ px, share }) => px / share);
      return told.length === 0 ? [] : [Math.max(...told)];
    });
    // Segments that point at the camera look short, never long: the larger values are the true ones.
    if (heights.length >= leastBodies) return quantile(heights, 0.75);
  }
  return null;
}

/** What is seen of a body's side: the length of trunk and what joins it, and how much of the height that is; null without a trunk. */
function segmentsOf(body: Body, side: Side): { readonly px: number; readonly share: number } | null {
  const isSeen = ({ confidence }: Sighting) => confidence >= leastConfidence;
  const [shoulder, hip] = [jointOf(body, 'shoulder', side), jointOf(body, 'hip', side)];
  if (!isSeen(shoulder) || !isSeen(hip)) return null;
  const ears = [jointOf(body, 'ear', side), jointOf(body, 'ear', otherSide(side))] as const;
  let px = distancePx(shoulder, hip);
  let share: number = shares.trunk;
  if (ears.some(isSeen)) {
    px += distancePx(between(...ears), shoulder);
    share += shares.neck;
  }
  let above = hip;
  for (const [part, more] of [['knee', shares.thigh] as const, ['ankle', shares.shank] as const]) {
    const below = jointOf(body, part, side);
    if (!isSeen(below)) break;
    px += distancePx(above, below);
    share += more;
    above = below;
  }
  return { px, share };
}
