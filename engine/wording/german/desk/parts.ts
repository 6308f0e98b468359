import type { PartsMessageId } from '../../english/desk/parts.ts';

export const parts: Readonly<Record<PartsMessageId, string>> = {
  close: 'Schließen',
  cancel: 'Abbrechen',
  save: 'Speichern',
  exercise: 'Übung',
  exercises: 'Übungen',
  noExercise: 'Keine passende Übung',
  notInLibrary: '{id} (nicht in der Bibliothek)',
  inSession: 'In dieser Einheit',
  library: 'Bibliothek',
  noEquipment: 'nichts',
  pickItems: 'Einzeln auswählen',
  items: '{label}: einzeln',
  received: 'Aus dem Rackside eines anderen Coachs.',
  receivedWords: 'Zu sehen ist alles so, wie es übergeben wurde; ändern lässt sich hier nichts.',
};
