import type { FollowedDisc } from './followed.ts';

/** What shows its rim less surely than `sure` must be more like a load in all else; below `doubtful` it is none. */
export const leastConfidence = { sure: 0.6, doubtful: 0.42 } as const;
/** How long a doubtful one is followed before it may be chosen. */
export const doubtfulForS = 1.5;

/** A load has moved when it went further up and down than this, in radii: the sure, and the doubtful. */
const leastRise = { sure: 0.45, doubtful: 1 } as const;
/** How nearly the face must look the same all round: a head, a knee and a piece of clothing don't. */
const leastEvenness = { sure: 0.55, doubtful: 0.7 } as const;
/** A doubtful one must have been seen so often, and in such a share of the pictures. */
const doubtfulTimesSeen = 20;
const doubtfulSeenShare = 0.6;

/** Whether a candidate moved as a load does and looks like a disc. */
export function isMover(one: FollowedDisc): boolean {
  if (one.confidence < leastConfidence.doubtful) return false;
  const sureness = one.confidence >= leastConfidence.sure ? 'sure' : 'doubtful';
  if (one.evidence.evenness < leastEvenness[sureness]) return false;
  if (one.riseAndFallPx <= leastRise[sureness] * one.shape.radiusPx) return false;
  return sureness === 'sure' || (one.timesSeen >= doubtfulTimesSeen && one.seenShare >= doubtfulSeenShare);
}
