/** The desk: its sessions, and what is added to it. */
export const desk = {
  title: 'Desk',
  selfReview: 'Self-review',
  agreement: 'Agreement',
  handOver: 'Hand over',
  addTrainee: '{voice, select, self {About me} other {Add trainee}}',
  addSession: 'Add session',
  sessions: 'Sessions',
  jobs: 'Jobs',
  moreDue: 'Show more sessions to do',
  moreDone: 'Show more finished sessions',
  moreSecondLooks: 'Show more second looks',

  nothingYet: 'Nothing to review yet',
  whoTrains:
    '{voice, select, self {Fill in my goal, units and equipment.} other {Add the person whose lifts you review.}}',
  traineeAdded:
    '{voice, select, self {My details are filled in.} other {{count, plural, one {One trainee has been added.} other {# trainees have been added.}}}}',
  addNextTrainee: '{voice, select, self {Add another person} other {Add another trainee}}',
  addFirstTrainee: '{voice, select, self {About me} other {Add a trainee}}',
  firstSession: 'Add a session: one day of training.',
  addFirstSession: 'Add a session',
  dropHere:
    'Drop clips on it: one clip per set, from any phone. They are copied into {voice, select, self {my} other {your}} library and stay on this computer.',
  openIt: 'Open it: play, mark the reps, fill in the scorecard and write the letter.',
  lookAround: 'Want to look around first? Add the demo: an invented session, graded, with its letter.',
  addDemo: 'Add the demo',

  importClips: 'Import clips',
  dropClips: 'Drop clips or whole folders here, or clips straight onto a session.',
  copied: 'They are copied into {voice, select, self {my} other {your}} library. Nothing leaves this computer.',
  fromAnotherCoach: 'From another coach’s Rackside',
  receiveWords:
    'Imported handovers are read-only; a review file becomes a session of {voice, select, self {my} other {your}} own.',
  receiveFile: 'Zip or review file',
  receiveFolder: 'Folder',

  trainee: '{voice, select, self {Session} other {Trainee}}',
  date: 'Date',
  pictures: 'Pictures',
  exercises: 'Exercises',
  acts: 'Actions',
  clips: 'Clips',
  grade: 'Grade',
  gradeFacts: '{share} looked at, {flags, plural, one {# flag} other {# flags}}',
  mySession: 'My session',
  received: 'Received, read only',
  damaged: 'Damaged',
  listsDamaged:
    'A disk fault changed or deleted entries in these lists: {lists}. Rackside does not open what was changed; everything else is safe. The library’s “backups” folder may hold a good copy.',
  damagedTrainees: '{voice, select, self {people} other {trainees}}',
  damagedSessions: 'sessions',
  damagedInbox: 'inbox',
  noExercises: 'none yet',
  provisional: 'provisional',
  byHand: 'set by hand',
  historyOf: 'History: {name}',
  importInto: 'Import clips: {session}',

  secondLooks: 'Second looks',
  secondLooksWords:
    'The same clips graded again with the first review hidden. Finish a second look before {voice, select, self {I} other {you}} compare.',
  shareLookedAt: '{share} looked at',
  compare: 'Compare',

  addTraineeTitle: '{voice, select, self {About me} other {Add a trainee}}',
  saveTrainee: '{voice, select, self {Save} other {Add trainee}}',
  name: '{voice, select, self {My name} other {Name}}',
  noTraineeYet:
    '{voice, select, self {A session needs somebody who trained. I add that person first; the session comes next.} other {A session needs a trainee, and there is none yet. Add one first; the session comes next.}}',
  addSessionTitle: 'Add a session',
  whoTrained: '{voice, select, self {Who trained} other {Trainee}}',
  sessionTitle: 'Title',
  titleExample: 'Lower body, week 3',
} as const;

export type DeskMessageId = keyof typeof desk;
