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
};
