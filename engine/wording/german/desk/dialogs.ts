import type { DialogsMessageId } from '../../english/desk/dialogs.ts';

export const dialogs: Readonly<Record<DialogsMessageId, string>> = {
  handOverTitle: 'Wohin übergeben?',
  handOverButton: 'In diesen Ordner übergeben',
  receiveTitle: 'Ordner einer Übergabe',
  receiveButton: 'Importieren',
  sessionFileTitle: 'Übergabe oder Bewertungsdatei',
  sessionFile: 'Übergabe oder Bewertung',
  clips: 'Clips',
  allFiles: 'Alle Dateien',
};
