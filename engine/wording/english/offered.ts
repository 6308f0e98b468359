import type { OfferedMessageId } from '../../motion/measurement.ts';

/** What is said of movements that were not counted, and why each may be no rep. */
export const offered = {
  notCounted: '{count, plural, one {One movement was not counted} other {# movements were not counted}}',
  cutOffAtStart: 'the clip begins in the middle of it',
  cutOffAtEnd: 'the clip ends in the middle of it',
  short: 'it is much shorter than the reps',
  failed: 'it went back before the way was done, like a failed rep',
  maybeSetUp: 'it may be setting up for the set',
  maybePutDown: 'it may be putting the load down or walking off',
  otherHeight: 'it begins or ends at another height than the reps',
  poorlySeen: 'too little of it can be seen',
  nearSway: 'it is hardly more than the sway of a body that stands still',
  unlike: 'too little in the clip is like it',
} as const satisfies Readonly<Record<OfferedMessageId, string>>;
