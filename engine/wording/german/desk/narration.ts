import type { NarrationMessageId } from '../../english/desk/narration.ts';

/** Speaking over a clip. */
export const narration: Readonly<Record<NarrationMessageId, string>> = {
  narration: 'Audiokommentar',
  before:
    '{voice, select, self {Hier spreche ich einen Kommentar zum Clip: Ich spiele ihn dabei ab, gehe Bild für Bild, verlangsame, vergrößere und zeichne. Meine Stimme bleibt in der Bibliothek auf diesem Rechner, bis ich sie übergebe oder als Video speichere.} other {Sprich einen Kommentar zum Clip: Spiel ihn dabei ab, geh Bild für Bild, verlangsame, vergrößere und zeichne. Deine Stimme bleibt in der Bibliothek auf diesem Rechner, bis du sie übergibst oder als Video speicherst.}} Nach dem Mikrofon wird erst beim Start der Aufnahme gefragt.',
  record: 'Aufnehmen',
  pause: 'Pause',
  goOn: 'Weiter',
  keep: 'Aufgenommenes behalten',
  time: '{phase, select, asking {Wartet auf das Mikrofon} recording {Aufnahme {now}} paused {Pause bei {now}} keeping {Wird gespeichert} listening {{now} von {whole}} other {{whole}}}',
  done: 'Fertig',
  whileRecording:
    'Die Aufnahme läuft. Alle Tasten für das Bild gelten wie sonst; {voice, select, self {ich sehe} other {der Athlet sieht}} später genau das, was jetzt auf dem Bildschirm ist.',
  whilePaused: 'Pause. Was jetzt geschieht, wird nicht aufgenommen.',
  whileListening: 'Das Bild folgt der Aufnahme. Jede Taste, die das Bild bewegt, beendet die Wiedergabe.',
  kept: 'Aufgenommen. Die Aufnahme verlässt diesen Rechner nur als gespeichertes Video oder mit einem Häkchen bei der Übergabe.',
  interrupted: 'Eine Aufnahme zu diesem Clip wurde unterbrochen. Behalte, was da ist, oder lösch es.',
  deleteAsked:
    'Diesen Audiokommentar löschen? Die Aufnahme wird endgültig von diesem Rechner entfernt; „Rückgängig“ holt sie nicht zurück.',
  drawnThen: 'Beim Sprechen gezeichnet',
  keepIt: 'Behalten',
  deleteIt: 'Endgültig löschen',
  deleted: 'Der Audiokommentar und seine Aufnahme sind gelöscht.',
  noMicrophone:
    'Es ließ sich kein Mikrofon nutzen, deshalb wurde nichts aufgenommen; schließ eins an, erlaub den Zugriff in den Systemeinstellungen und versuch es noch einmal.',
  notHeard:
    'Die Aufnahme ließ sich nicht abspielen; der Clip und seine Bemerkungen sind, wie sie waren. Versuch es noch einmal oder lösch die Aufnahme und nimm eine neue auf.',
  filmName: '{clip} mit Audiokommentar',
  filmBegun: 'Das Video entsteht; siehe Aufträge.',
};
