/** The inbox: clips that have arrived and belong to no session yet. */
export const inbox = {
  title: 'Inbox',
  open: 'Inbox',
  openCount: 'Inbox ({count})',
  desk: 'Desk',
  headWords:
    '{count, plural, one {# clip} other {# clips}}, {ready} ready{megabytes, plural, =0 {} other {; # MB in the library}}',
  more: '{count, plural, one {# more clip appears} other {# more clips appear}} as these leave the inbox.',
  addFiles: 'Add files',
  addFolder: 'Add a folder',
  dropHere: 'Drop any number of clips or folders here.',
  empty: 'The inbox is empty',
  emptyWords:
    'Add files or a whole folder, or drop them here. Rackside guesses each clip’s {voice, select, self {day and exercise} other {trainee, day and exercise}}; correct what is wrong, then add them all to their sessions at once.',
  taken:
    '{taken, plural, =0 {No new clips} one {# clip added} other {# clips added}}{there, plural, =0 {} one {; # was here already} other {; # were here already}}{others, plural, =0 {} one {; skipped: {names}} other {; # files skipped: {names}}}.',
  brought:
    '{clips, plural, one {# clip} other {# clips}} added to {sessions, plural, one {# session} other {# sessions}}.',
  bringIn: '{count, plural, =0 {Add to sessions} one {Add # clip to its session} other {Add # clips to sessions}}',

  clips: 'Clips in the inbox',
  select: 'Select {file}',
  selectAll: 'Select all',
  file: 'Clip',
  length: 'Length',
  trainee: '{voice, select, self {Person} other {Trainee}}',
  session: 'Session',
  exercise: 'Exercise',
  view: 'View',
  load: 'Load (kg)',
  state: 'State',

  missing: 'Choose',
  newSession: 'New, {day}',
  newTrainee: 'New: {name}',
  notStated: 'not stated',
  otherDay: 'New session, another day',
  newOn: 'New session, {day}',
  noMatch: 'Nothing matches',
  chosenFor: '{what} for {count, plural, one {# clip} other {# clips}}',

  chosen: 'chosen',
  folder: 'folder',
  fileName: 'file name',
  only: 'the only one',
  lastUsed: 'last chosen',
  recorded: 'day filmed',
  plan: 'plan',
  before: 'clip before',
  joints: 'joints',
  restsOnChosen: '{voice, select, self {I} other {You}} chose this.',
  restsOnFolder: 'The folder’s name says so.',
  restsOnFileName: 'The file’s name says so.',
  restsOnOnly: 'There is only one {voice, select, self {person} other {trainee}}.',
  restsOnLastUsed:
    'The folder names nobody, or several: this is the {voice, select, self {person} other {trainee}} chosen last.',
  restsOnRecorded: 'The day it was filmed.',
  restsOnPlan: 'Next in the session’s plan.',
  restsOnBefore: 'The same as the clip before it.',
  restsOnJoints: 'The joints show it.',

  ready: 'Ready',
  needsTrainee: 'Choose {voice, select, self {a person} other {a trainee}}',
  needsExercise: 'Choose an exercise',
  reading: 'Being read',
  stopped: 'Not read',
  readAgain: 'Read again',
  twin: 'In the library: {where}',
  sameAs: 'Same as {file}',
  anyway: 'Add anyway',
  filmedAt: '{when}',
  filmedBy:
    '{by, select, film {Filmed {when}, according to the file} other {File saved {when}; it doesn’t say when it was filmed}}',
  liesIn: 'From {folder}',

  selected: '{count, plural, =0 {Nothing selected} one {# selected} other {# selected}}',
  remove: '{count, plural, one {Remove this clip} other {Remove # clips}}',
  removed: '{count, plural, one {# clip} other {# clips}} removed from the inbox.',
  putBack: 'Put back',
  removeTwins: '{count, plural, one {Remove # duplicate} other {Remove # duplicates}}',
  hint: 'Arrow keys move; typing changes a cell. Space, or Shift with an arrow, selects clips and Ctrl+A selects them all; a change then applies to every selected clip. Delete undoes a choice or, on the clip itself, removes the clip.',

  watched: 'Watched folder',
  watchWords: 'New clips in this folder are added to the inbox while Rackside is open.',
  watchGone:
    'The folder “{folder}” can’t be found at the moment, so nothing is added from it; watching resumes once it is back.',
  watch: 'Choose a folder',
  watchOther: 'Choose another',
  unwatch: 'Stop watching',
  jobs: 'Being read',
} as const;

export type InboxMessageId = keyof typeof inbox;
