import type { SettingsMessageId } from '../../english/desk/settings.ts';

export const settings: Readonly<Record<SettingsMessageId, string>> = {
  title: 'Einstellungen',
  desk: 'Diese Oberfläche',

  night: 'Zugesagte Zeit',
  daysPromised: 'Zurück innerhalb von',
  days: '{count, plural, one {Tag} other {Tagen}}',
  daysPromisedWords:
    'Gezählt ab dem Tag, an dem der erste Clip kam. Was länger dauert, gilt als überfällig, bis es verschickt ist.',

  measuring: 'Messen',
  measureByItself: 'Neue Clips von selbst messen',
  measureByItselfWords:
    'Die neuesten Einheiten zuerst, solange Rackside offen ist. Der Clip auf dem Bildschirm kommt zuerst dran; die Reihenfolge lässt sich in der Auftragsliste ändern.',

  phrases: 'Textbausteine',
  phrasesWords:
    'Werden beim Bearbeiten eines Briefs eingefügt: mit Strg oder Befehl und der Zahl oder aus der Zeile unter dem Text. Aus „{nameMark}“ wird der Name, aus „{exerciseMark}“ die Übung.',
  phraseName: 'Name',
  phraseText: 'Text',
  phraseKey: 'Zahl',
  phraseNoKey: 'keine',
  phraseAdd: 'Textbaustein hinzufügen',
  phraseRemove: 'Textbaustein löschen: {name}',
  phraseNew: 'Neuer Textbaustein',
};
