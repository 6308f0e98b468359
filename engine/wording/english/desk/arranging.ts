/** Renaming, moving, merging and removing what is on the desk and in a session, and the bin. */
export const arranging = {
  menuOf: 'More: {name}',
  menu: 'More',
  renameSession: 'Rename session',
  renameClip: 'Rename clip',
  title: 'Title',
  clipName: 'Name of the clip',
  rename: 'Rename',

  moveClip: 'Move clip',
  moveEntry: 'Move exercise',
  moveSession: '{voice, select, self {Move session to another person} other {Move session to another trainee}}',
  move: 'Move',
  trainee: '{voice, select, self {Person} other {Trainee}}',
  session: 'Session',
  exercise: 'Exercise',
  asItIs: '{exercise} (unchanged)',
  place: '{date}, {title}',
  noPlaces:
    '{voice, select, self {There is} other {This trainee has}} no session to move it to. Add one on the desk first.',
  noTrainee:
    '{voice, select, self {There is nobody else to move it to.} other {There is no other trainee to move it to. Add one first.}}',
  sentStay: 'Letters already sent stay with the session.',

  mergeSession: 'Merge sessions of the same day',
  mergeInto: 'Merge into',
  merge: 'Merge',
  mergeWords:
    'Its exercises, clips and notes move to the other session. The emptied session goes to the bin, along with the letters sent for it.',
  nothingToMerge:
    '{voice, select, self {I have} other {This trainee has}} no other session on that day. Change the date of one of them first.',

  clipExercise: 'Exercise of this clip',
  clipExerciseWords:
    'The clip moves to that exercise in this session. Flags and ticks that don’t apply to it are parked, not lost.',
  change: 'Change',

  clipRemoved: 'Moved to the bin: {clip}.',
  entryRemoved: 'Moved to the bin: {exercise}, with {clips, plural, =0 {no clips} one {# clip} other {# clips}}.',
  sessionRemoved: 'Moved to the bin: {session}.',
  redone: 'Done again: {act}',
  sessionFinished: 'Finished without a letter: {session}.',
  sessionTakenUp: 'Reopened: {session}.',
  undo: 'Undo',
  undone: 'Undone: {act}.',
  dismiss: 'Dismiss',

  parkedLine: 'Parked: {count, plural, one {# flag or tick} other {# flags and ticks}}',
  parkedTitle: 'Parked flags and ticks',
  parkedWords:
    'They don’t apply to the exercise that their clip is now judged as, so they don’t count. Change the exercise back and they return.',
  parkedFlag: '{what}: {severity}, {reps}',
  parkedNote: '{what}: note, {reps}',
  parkedTicks: '{what}: {count, plural, one {# tick} other {# ticks}}',
  parkedOf: '{exercise}, {clip}',
  wholeSet: 'whole set',
  reps: '{count, plural, one {rep {reps}} other {reps {reps}}}',
  discard: 'Discard',
  discardOf: 'Discard: {what}',
  discardAll: 'Discard all parked on this clip',
  noneParked: 'Nothing is parked in this session.',

  bin: 'Bin',
  binWords:
    'Removed sessions, exercises and clips stay here for {days} days and can be brought back. After that they are deleted, footage included.',
  binEmpty: 'The bin is empty.',
  what: 'What',
  from: 'From',
  removed: 'Removed',
  left: 'Time left',
  daysLeft: '{days, plural, =0 {until the next start} one {# day} other {# days}}',
  binSession: 'Session: {name}',
  binEntry: 'Exercise: {name}',
  binClip: 'Clip: {name}',
  binFile: 'From the inbox: {name}',
  fromInbox: 'Inbox',
  binClips: '{count, plural, =0 {no clips} one {# clip} other {# clips}}',
  bringBack: 'Bring back',
  bringBackOf: 'Bring back: {name}',
  bringBackOrDelete: 'Bring back or delete',
  deleteNow: 'Delete now',
  deleteOf: 'Delete now: {name}',
  emptyBin: 'Empty the bin',
  deleteForGood: 'Delete for good',
  whatGoes:
    '{going, select, session {This deletes the session with {clips, plural, =0 {everything judged} one {its clip and everything judged} other {its # clips and everything judged}}, its second look, its letters and the library’s copies of its handovers.} entry {This deletes the exercise with {clips, plural, =0 {everything judged} one {its clip and everything judged} other {its # clips and everything judged}}.} clip {This deletes the clip with its flags, drawings, measures and narration.} file {This deletes the copy in the library; the original file stays where it is.} other {This deletes {things, plural, one {# thing} other {all # things}} with {clips, plural, =0 {no clips} one {# clip} other {# clips}}, and everything judged, sent and recorded in them.}} Footage that another clip shows is kept.',
  notUndone: 'This can’t be undone.',
  pictures: 'Picture',
} as const;

export type ArrangingMessageId = keyof typeof arranging;
