import type { HistoryMessageId } from '../../english/desk/history.ts';

export const history: Readonly<Record<HistoryMessageId, string>> = {
  title: 'Verlauf',
  nothing: 'Noch nichts geändert.',
  undone: '(rückgängig gemacht)',
  backToHere: 'Zurück bis hier',
  redoToHere: 'Bis hier wiederherstellen',
  goTo: '{where}: {action}',
};
