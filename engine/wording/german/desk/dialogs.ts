import type { DialogsMessageId } from '../../english/desk/dialogs.ts';

export const dialogs: Readonly<Record<DialogsMessageId, string>> = {
  handOverTitle: 'Wohin übergeben?',
  handOverButton: 'In diesen Ordner übergeben',
  libraryTitle: 'Ordner einer Bibliothek, oder ein leerer Ordner für eine neue',
  libraryButton: 'Diese Bibliothek öffnen',
  receiveTitle: 'Ordner einer Übergabe',
  receiveButton: 'Importieren',
  importTitle: 'Ordner mit Clips',
  importButton: 'Clips hinzufügen',
  watchTitle: 'Welcher Ordner soll überwacht werden?',
  watchButton: 'Diesen Ordner überwachen',
  sessionFileTitle: 'Übergabe oder Bewertungsdatei',
  sessionFile: 'Übergabe oder Bewertung',
  clips: 'Clips',
  allFiles: 'Alle Dateien',
  lateWindow:
    'Das Fenster hat seit einer Minute nichts gezeichnet; die Bibliothek ist unversehrt. Bitte das Fenster schließen und Rackside neu starten. Notiert ist es in {logFile}',
};
