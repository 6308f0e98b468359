import type { DialogsMessageId } from '../../english/desk/dialogs.ts';

export const dialogs: Readonly<Record<DialogsMessageId, string>> = {
  handOverTitle: 'Wohin übergeben?',
  handOverButton: 'In diesen Ordner übergeben',
  libraryTitle: 'Ordner einer Bibliothek oder leerer Ordner für eine neue',
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
    'Das Fenster ist seit einer Minute leer; die Bibliothek ist unversehrt. Schließ das Fenster und starte Rackside neu. Einzelheiten stehen in {logFile}',
};
