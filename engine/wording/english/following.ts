import type { FollowReason, Follows } from '../../motion/measurement.ts';

/** What is followed through a clip, and why, as a sentence. */
export const followed = 'What is followed: {part}, because {because}.';

export const followedParts = {
  disc: 'the near disc',
  point: 'the point that was clicked',
  hands: 'the hands',
  shoulders: 'the shoulders',
  hips: 'the hips',
  head: 'the head',
  legs: 'the knees and ankles',
  nothing: 'nothing',
} as const satisfies Readonly<Record<Follows, string>>;

/** Said to the trainee. */
export const followedBecause = {
  clicked: 'your coach clicked it',
  chosen: 'your coach chose this',
  discMovesWithLifter: 'it moves with you',
  discUnchecked: 'there was nothing else to check it against',
  noDisc: 'no disc was found that moves with you',
  discStandsStill: 'the disc that was found stands still while you move',
  discMovesOtherwise: 'the disc that was found does not move the way you do',
  discSeldomSeen: 'the disc is hidden for too much of the lift',
  discOfUnlikelySize: 'going by the disc that was found, you would be far too tall or too short',
  noDiscExpected: 'this exercise has no disc to follow',
  nothingSeen: 'neither a disc nor you could be followed',
} as const satisfies Readonly<Record<FollowReason, string>>;
