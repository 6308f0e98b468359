/** Importing clips into a session. */
export const importing = {
  title: 'Import clips',
  import: 'Import',
  session: 'Session',
  chooseExercise: 'Choose the exercise',
  filmedFrom: 'Filmed from',
  viewNotStated: 'Not stated: measuring reads it from the clip',
  chooseFiles: 'Choose files',
  noClips: 'No clips chosen yet',
  outsideTitle: 'Clips outside the review’s folder',
  outsideWords:
    'This review file names {count, plural, one {a clip} other {# clips}} outside its own folder. Importing copies {count, plural, one {it} other {them}} into the library, so {voice, select, self {I check} other {check}} the {count, plural, one {path} other {paths}} first.',
  outsideImport: '{count, plural, one {Import this clip} other {Import these clips}}',
  chosen: '{count, plural, one {# clip} other {# clips}}: {files}',
} as const;

export type ImportingMessageId = keyof typeof importing;
