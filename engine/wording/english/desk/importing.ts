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
  chosen: '{count, plural, one {# clip} other {# clips}}: {files}',
} as const;

export type ImportingMessageId = keyof typeof importing;
