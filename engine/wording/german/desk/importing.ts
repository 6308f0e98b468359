import type { ImportingMessageId } from '../../english/desk/importing.ts';

export const importing: Readonly<Record<ImportingMessageId, string>> = {
  title: 'Clips importieren',
  import: 'Importieren',
  session: 'Einheit',
  chooseExercise: 'Übung auswählen',
  filmedFrom: 'Ansicht',
  viewNotStated: 'Keine Angabe: Beim Messen ergibt sie sich aus dem Clip',
  chooseFiles: 'Dateien auswählen',
  noClips: 'Noch keine Clips ausgewählt',
  chosen: '{count, plural, one {# Clip} other {# Clips}}: {files}',
};
