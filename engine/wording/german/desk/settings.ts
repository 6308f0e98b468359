import type { SettingsMessageId } from '../../english/desk/settings.ts';

export const settings: Readonly<Record<SettingsMessageId, string>> = {
  title: 'Einstellungen',
  desk: 'Darstellung',

  night: 'Zugesagte Frist',
  daysPromised: 'Zurück innerhalb von',
  days: '{count, plural, one {Tag} other {Tagen}}',
  daysPromisedWords:
    'Gezählt ab dem Tag, an dem der erste Clip kam. Was länger dauert, gilt als überfällig, bis es verschickt ist.',

  measuring: 'Messen',
  measureByItself: 'Neue Clips automatisch messen',
  measureByItselfWords:
    'Solange Rackside offen ist, die neuesten Einheiten zuerst. Der Clip auf dem Bildschirm geht vor; die Reihenfolge lässt sich bei den Aufträgen ändern.',

  privacy: 'Privatsphäre',
  closeAfter: 'Bei Nichtbenutzung schließen',
  closeNever: 'Nie',
  closeAfterMinutes: 'Nach {count, plural, one {# Minute} other {# Minuten}}',
  closeAfterWords:
    'Mit dem Fenster schließt sich die Bibliothek, sodass sich ein verschlüsselter Ordner oder Datenträger wieder sperren kann. Vorher wird Text gespeichert und laufende Arbeit abgeschlossen. Rackside hat kein eigenes Passwort: also auch den Bildschirm sperren.',
  closesSoon: 'Rackside ist unbenutzt und schließt sich in einer Minute. Eine beliebige Taste hält es offen.',

  phrases: 'Textbausteine',
  phrasesWords:
    'Sie lassen sich beim Bearbeiten eines Briefs einfügen: mit Strg oder Befehl und der Ziffer oder aus der Zeile unter dem Text. Aus „{nameMark}“ wird der Name, aus „{exerciseMark}“ die Übung.',
  phraseName: 'Name',
  phraseText: 'Text',
  phraseKey: 'Ziffer',
  phraseNoKey: 'keine',
  phraseAdd: 'Textbaustein hinzufügen',
  phraseRemove: 'Textbaustein löschen: {name}',
  damaged:
    'Ein Fehler des Datenträgers hat eine Einstellung verändert, deshalb gilt wieder ihr üblicher Wert; alles andere ist sicher. Sieh die Einstellungen durch.',
  phraseNew: 'Neuer Textbaustein',
};
