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
  outsideTitle: 'Videos außerhalb des Ordners der Bewertung',
  outsideWords:
    'Diese Bewertungsdatei verweist auf {count, plural, one {ein Video} other {# Videos}} außerhalb ihres Ordners. Beim Importieren {count, plural, one {kommt eine Kopie} other {kommen Kopien}} in die Bibliothek, {voice, select, self {deshalb prüfe ich} other {prüf deshalb}} erst {count, plural, one {den Pfad} other {die Pfade}}.',
  outsideImport: '{count, plural, one {Dieses Video} other {Diese Videos}} importieren',
  chosen: '{count, plural, one {# Clip} other {# Clips}}: {files}',
};
