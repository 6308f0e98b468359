import type { OfferedMessageId } from '../../motion/measurement.ts';

/** What is said of movements that were not counted, and why each may be no rep. */
export const offered = {
  notCounted:
    '{count, plural, one {One movement was not counted as a rep} other {# movements were not counted as reps}}',
  cutOffAtStart: 'the clip begins in the middle of it',
  cutOffAtEnd: 'the clip ends in the middle of it',
  short: 'it covers much less range than the reps',
  failed: 'it turned back before the lift was finished, like a failed rep',
  maybeSetUp: 'it may be setting up before the set',
  maybePutDown: 'it may be putting the load down or walking off',
  otherHeight: 'it begins or ends at a different height from the reps',
  poorlySeen: 'too little of it is visible',
  nearSway: 'it is hardly more than the sway of standing still',
  gesture: 'the hands move as in a gesture, not as in this lift',
  unlike: 'the clip has too few movements like it',
} as const satisfies Readonly<Record<OfferedMessageId, string>>;
