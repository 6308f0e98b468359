import type { ImportingMessageId } from '../../english/desk/importing.ts';

export const importing: Readonly<Record<ImportingMessageId, string>> = {
  title: 'Clips importieren',
  import: 'Importieren',
  session: 'Einheit',
  chooseExercise: 'Übung auswählen',
  filmedFrom: 'Gefilmt von',
  viewNotStated: 'Keine Angabe: Beim Messen wird es aus dem Clip gelesen',
  chooseFiles: 'Dateien auswählen',
  noClips: 'Noch keine Clips ausgewählt',
  chosen: '{count, plural, one {# Clip} other {# Clips}}: {files}',
};
