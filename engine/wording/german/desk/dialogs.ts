import type { DialogsMessageId } from '../../english/desk/dialogs.ts';

export const dialogs: Readonly<Record<DialogsMessageId, string>> = {
  handOverTitle: 'Wohin übergeben?',
  handOverButton: 'In diesen Ordner übergeben',
  receiveTitle: 'Ordner einer Übergabe',
  receiveButton: 'Importieren',
  sessionFileTitle: 'Übergabe oder Review-Datei',
  sessionFile: 'Übergabe oder Review',
  clips: 'Clips',
  allFiles: 'Alle Dateien',
};
