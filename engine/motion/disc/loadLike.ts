import type { FollowedDisc } from './followed.ts';

/** What shows its rim less surely than `sure` must be more like a load in all else; below `doubtful` it is none. */
export const leastConfidence = { sure: 0.6, doubtful: 0.42 } as const;
/** How long a doubtful one is followed before it may be chosen. */
export const doubtfulForS = 1.5;

/** A load has moved when it went further up and down than this, in radii: the sure, and the doubtful. */
const leastRise = { sure: 0.45, doubtful: 1 } as const;
/** How nearly the face must look the same all round: a head, a knee and a piece of clothing don't. */
const leastEvenness = { sure: 0.55, doubtful: 0.7 } as const;
/** Share of the rim that shows and share of the face that is even, together: what one lacks the other must make up for. */
const leastRimAndFace = 1.43;
/** A doubtful one must have been seen so often, and in such a share of the pictures. */
const doubtfulTimesSeen = 20;
const doubtfulSeenShare = 0.6;
/** Its radius may vary, and its edge points scatter, by so much of the radius. */
const doubtfulSpread = 0.02;
const doubtfulScatter = 0.02;
/** Its way is steeper than 45°. */
const upright = Math.SQRT1_2;

/** Whether a candidate moved as a load does and looks like a disc. */
export function isMover(one: FollowedDisc): boolean {
  if (one.confidence < leastConfidence.doubtful) return false;
  const sureness = one.confidence >= leastConfidence.sure ? 'sure' : 'doubtful';
  if (one.evidence.evenness < leastEvenness[sureness]) return false;
  if (one.evidence.rimShare + one.evidence.evenness < leastRimAndFace) return false;
  if (one.riseAndFallPx <= leastRise[sureness] * one.shape.radiusPx) return false;
  return sureness === 'sure' || isSteady(one);
}

/** Whether a doubtful one kept its size and its rim, was seen long enough, and went up and down rather than aside. */
function isSteady(one: FollowedDisc): boolean {
  const evidence = one.evidence.result(0);
  return (
    evidence !== null &&
    one.timesSeen >= doubtfulTimesSeen &&
    one.seenShare >= doubtfulSeenShare &&
    evidence.radiusSpreadShare <= doubtfulSpread &&
    evidence.scatterShare <= doubtfulScatter &&
    one.riseAndFallPx >= one.travelPx * upright
  );
}
