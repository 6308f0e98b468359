import type { NarrationMessageId } from '../../english/desk/narration.ts';

/** Einen Clip besprechen. */
export const narration: Readonly<Record<NarrationMessageId, string>> = {
  narration: 'Besprechung',
  before:
    '{voice, select, self {Ich bespreche den Clip: Ich spiele ihn ab, gehe Bild für Bild, verlangsame, vergrößere und zeichne, während ich spreche. Meine Stimme bleibt in der Bibliothek auf diesem Rechner, bis ich sie übergebe oder als Film speichere.} other {Besprich den Clip: Spiel ihn ab, geh Bild für Bild, verlangsame, vergrößere und zeichne, während du sprichst. Deine Stimme bleibt in der Bibliothek auf diesem Rechner, bis du sie übergibst oder als Film speicherst.}} Nach dem Mikrofon wird erst beim Start der Aufnahme gefragt.',
  record: 'Aufnehmen',
  pause: 'Pause',
  goOn: 'Weiter',
  keep: 'Aufgenommenes behalten',
  time: '{phase, select, asking {Wartet auf das Mikrofon} recording {Aufnahme {now}} paused {Pause bei {now}} keeping {Wird gespeichert} listening {{now} von {whole}} other {{whole}}}',
  done: 'Fertig',
  whileRecording:
    'Aufnahme läuft. Alle Tasten für das Bild gelten wie sonst; {voice, select, self {zu sehen ist später} other {der Athlet sieht}} genau das, was jetzt auf dem Bildschirm ist.',
  whilePaused: 'Pause. Was jetzt geschieht, wird nicht aufgenommen.',
  whileListening: 'Das Bild folgt der Aufnahme. Jede Taste, die das Bild bewegt, beendet sie.',
  kept: 'Aufgenommen. Sie verlässt den Rechner nur als gespeicherter Film oder mit einem Häkchen bei der Übergabe.',
  interrupted: 'Eine Aufnahme zu diesem Clip wurde unterbrochen. Behalte, was da ist, oder lösch es.',
  deleteAsked:
    'Diese Besprechung löschen? Die Aufnahme wird endgültig von diesem Rechner entfernt; Rückgängig holt sie nicht zurück.',
  drawnThen: 'Beim Sprechen gezeichnet',
  keepIt: 'Behalten',
  deleteIt: 'Endgültig löschen',
  deleted: 'Die Besprechung und ihre Aufnahme wurden gelöscht.',
  noMicrophone:
    'Kein Mikrofon war verfügbar, deshalb wurde nichts aufgenommen; schließ eines an, erlaube es in den Systemeinstellungen und versuch es noch einmal.',
  notHeard: 'Die Aufnahme ließ sich nicht abspielen; der Clip und seine Bemerkungen sind, wie sie waren.',
  filmName: '{clip} besprochen',
  filmBegun: 'Der Film entsteht; siehe Aufgaben.',
};
