/** Renaming, moving, merging and removing what is on the desk and in a session, and the bin. */
export const arranging = {
  menuOf: 'More for {name}',
  menu: 'More',
  renameSession: 'Rename session',
  renameClip: 'Rename clip',
  title: 'Title',
  clipName: 'Name of the clip',
  rename: 'Rename',

  moveClip: 'Move clip',
  moveEntry: 'Move exercise',
  moveSession: '{voice, select, self {Give session to another person} other {Give session to another trainee}}',
  move: 'Move',
  trainee: '{voice, select, self {Person} other {Trainee}}',
  session: 'Session',
  exercise: 'Exercise',
  asItIs: '{exercise}, as now',
  place: '{date}, {title}',
  noPlaces:
    '{voice, select, self {There is} other {This trainee has}} no session to move it to. Add one on the desk first.',
  noTrainee:
    '{voice, select, self {There is nobody else to give it to.} other {There is no other trainee to give it to. Add one first.}}',
  sentStay: 'Letters that were sent for it stay with it.',

  mergeSession: 'Merge sessions of one day',
  mergeInto: 'Into which session',
  merge: 'Merge',
  mergeWords:
    'Its exercises, clips and notes go into the other session. The emptied session, with the letters sent for it, goes to the bin.',
  nothingToMerge:
    '{voice, select, self {I have} other {This trainee has}} no other session on that day. Change the date of one of them first.',

  clipExercise: 'Exercise of this clip',
  clipExerciseWords: 'The clip moves to that exercise in this session. What means nothing for it is parked, not lost.',
  change: 'Change',

  clipRemoved: 'In the bin: {clip}.',
  entryRemoved: 'In the bin: {exercise}, with {clips, plural, =0 {no clips} one {# clip} other {# clips}}.',
  sessionRemoved: 'In the bin: {session}.',
  undo: 'Undo',
  undone: 'Undone: {act}.',
  dismiss: 'Dismiss',

  parkedLine: 'Parked: {count, plural, one {# flag or tick} other {# flags and ticks}}',
  parkedTitle: 'Parked flags and ticks',
  parkedWords:
    'They mean nothing for the exercise their clip is judged as now, so they don’t count. They come back when the exercise goes back.',
  parkedFlag: '{what}: {severity}, {reps}',
  parkedNote: '{what}: note, {reps}',
  parkedTicks: '{what}: {count, plural, one {# tick} other {# ticks}}',
  parkedOf: '{exercise}, {clip}',
  wholeSet: 'whole set',
  reps: '{count, plural, one {rep {reps}} other {reps {reps}}}',
  discard: 'Discard',
  discardOf: 'Discard: {what}',
  discardAll: 'Discard all of this clip',
  noneParked: 'Nothing is parked in this session.',

  bin: 'Bin',
  binWords:
    'What was removed stays here for {days} days and can be brought back. After that it is deleted with its footage.',
  binEmpty: 'The bin is empty.',
  what: 'What',
  from: 'From',
  removed: 'Removed',
  left: 'Left',
  daysLeft: '{days, plural, =0 {until the next start} one {# day} other {# days}}',
  binSession: 'Session: {name}',
  binEntry: 'Exercise: {name}',
  binClip: 'Clip: {name}',
  binClips: '{count, plural, =0 {no clips} one {# clip} other {# clips}}',
  bringBack: 'Bring back',
  bringBackOf: 'Bring back: {name}',
  pictures: 'Picture',
} as const;

export type ArrangingMessageId = keyof typeof arranging;
