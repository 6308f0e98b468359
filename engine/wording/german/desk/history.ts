import type { HistoryMessageId } from '../../english/desk/history.ts';

export const history: Readonly<Record<HistoryMessageId, string>> = {
  title: 'Verlauf',
  nothing: 'Noch nichts getan.',
  undone: '(rückgängig gemacht)',
  backToHere: 'Zurück bis hier',
  redoToHere: 'Bis hier wiederherstellen',
  goTo: '{where}: {action}',
};
