/** What was done in a session. */
export const history = {
  title: 'History',
  nothing: 'Nothing done yet.',
  undone: '(undone)',
  backToHere: 'Back to here',
  redoToHere: 'Redo up to here',
  goTo: '{where}: {action}',
} as const;

export type HistoryMessageId = keyof typeof history;
