/** Places that may hold a hidden name, before anything is handed over. */
export const names = {
  title: 'Names to check',
  explain:
    '{count, plural, one {This may be a hidden name or an ordinary word. Nothing is handed over until that is decided.} other {These may be hidden names or ordinary words. Nothing is handed over until each is decided.}}',
  ofSession: 'Names to check: {session}',
  places: '{count, plural, one {# place} other {# places}}',
  hide: 'Hide it',
  hideAt: 'Hide it: “{word}”, {where}',
  noName: 'Not a name',
  noNameAt: 'Not a name: “{word}”, {where}',
  edit: 'Edit',
  editAt: 'Edit: {where}',
  listen: 'Listen',
  hideAll: 'Hide all {count}',
  hideAllOf: 'Hide all {count}: {session}',
  noneIsName: 'None is a name',
  noneIsNameOf: 'None is a name: {session}',
  notSaid: 'Name not said',
  notSaidIn: 'Name not said: {clip}',
  voiceWords:
    '{voice, select, self {What I say here was not checked for my name.} other {What you say here was not checked for the name.}}',
  hidden: '{count, plural, one {A name is} other {# names are}} hidden.',
  kept: '{count, plural, one {A word stays as it is.} other {# words stay as they are.}}',
  undo: 'Undo',
  checkFirst: '{count, plural, one {Check # place first} other {Check # places first}}',
  inTitle: 'Title',
  inNotes: 'Notes on the session',
  inPainNote: 'Pain note',
  inReason: 'Reason for the grade',
  inClipName: 'Name of the clip',
  inDrawnText: 'Drawn text',
  inNote: 'Comment on a flag',
  inCue: 'Cue',
  inLetter: 'Letter',
  inVoice: 'Narration',
} as const;

export type NamesMessageId = keyof typeof names;
