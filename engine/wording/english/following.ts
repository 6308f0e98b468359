import type { FollowReason, Follows } from '../../motion/measurement.ts';

/** What is followed through a clip, and why, as a sentence. */
export const followed = 'Followed: {part}, since {because}.';

export const followedParts = {
  disc: 'the near disc',
  point: 'the point that was clicked',
  hands: 'the hands',
  shoulders: 'the shoulders',
  hips: 'the hips',
  head: 'the head',
  legs: 'knees and ankles',
  nothing: 'nothing',
} as const satisfies Readonly<Record<Follows, string>>;

/** Said to the trainee. */
export const followedBecause = {
  clicked: 'your coach clicked it',
  chosen: 'your coach chose it',
  discMovesWithLifter: 'it moves with you',
  discUnchecked: 'nothing else could be held against it',
  noDisc: 'no disc was found that moves with you',
  discStandsStill: 'the disc that was found stands still while you move',
  discMovesOtherwise: 'the disc that was found moves otherwise than you',
  discSeldomSeen: 'the disc is hidden for too much of the way',
  discOfUnlikelySize: 'the disc that was found would make you too tall or too small',
  noDiscExpected: 'this exercise has no disc to follow',
  nothingSeen: 'neither a disc nor you could be followed',
} as const satisfies Readonly<Record<FollowReason, string>>;
