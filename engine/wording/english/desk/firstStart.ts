/** The first start: what to begin with, and who reviews. */
export const firstStart = {
  lead: 'Review lifts from video. Clips, flags and letters stay on this computer.',
  makingDemo: 'Making the demo session. This takes a few seconds.',
  withoutDemo: 'Continue without the demo',
  startWith: 'Start with',
  demo: 'The demo session',
  demoWords: 'An invented session with clips, reps, flags and grades to look around in.',
  empty: 'An empty library',
  emptyWords:
    'Nothing in it yet. {voice, select, self {Next I add a session and drop in its clips.} other {Add your trainees and drop in their clips.}}',
  who: 'Who reviews',
  coach: 'A coach',
  coachWords: 'Letters are written to the people {voice, select, self {I} other {you}} coach.',
  self: 'Myself',
  selfWords: 'Letters are notes to myself about my own sets.',
  name: '{voice, select, self {My name} other {Name under your letters}}',
  start: 'Start',
} as const;

export type FirstStartMessageId = keyof typeof firstStart;
