import type { JobsMessageId } from '../../english/desk/jobs.ts';

export const jobs: Readonly<Record<JobsMessageId, string>> = {
  savedState: 'Gespeichert oder nicht',
  doneState: 'Was zuletzt geschah',
  saving: 'Wird gespeichert',
  saved: 'Gespeichert',
  notSaved: 'Nicht gespeichert',
  dismiss: 'Meldung schließen',
  running: '{count, plural, one {# Auftrag} other {# Aufträge}}',
  failedCount: '{count} fehlgeschlagen',
  restarted: 'Die Bibliothek wurde neu geöffnet. Alles Gespeicherte ist noch da.',

  waiting: 'wartet',
  runningState: 'läuft',
  done: 'fertig',
  failed: 'fehlgeschlagen',
  cancelled: 'abgebrochen',
  progress: 'Fortschritt: {job}',
  cancel: 'Abbrechen',
  tryAgain: 'Noch einmal versuchen',

  title: 'Aufträge',
  none: 'Gerade läuft nichts.',
  pause: 'Messen anhalten',
  goOn: 'Messen fortsetzen',
  failedJobs: 'Fehlgeschlagene Aufträge',
  retryAll: 'Alle noch einmal versuchen',
  dismissAll: 'Alle ausblenden',
  cancelOf: 'Abbrechen: {job}',
  tryAgainOf: 'Noch einmal versuchen: {job}',
  dismissOf: 'Ausblenden: {job}',
  moveFirst: 'Ganz nach vorn: {job}',
  moveUp: 'Nach vorn: {job}',
  moveDown: 'Nach hinten: {job}',
  paused: 'Messen ist angehalten',

  endedSaid: '{state, select, done {Fertig} failed {Fehlgeschlagen} other {Abgebrochen}}: {job}',
};
