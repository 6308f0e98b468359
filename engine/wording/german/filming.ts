import type { CalendarMessageId, FilmMessageId } from '../english/filming.ts';

/** The filming card. */
export const film = {
  title: 'So filmst du deine Übungen',
  stillWhat: 'Stell das Handy fest hin.',
  stillWhy: 'Auf ein Stativ, ein Regal oder einen Scheibenstapel: Eine bewegte Kamera macht jede Linie krumm.',
  distanceWhat: 'Drei bis fünf Meter Abstand.',
  distanceWhy: 'Näher dran wirkt zu groß, was vorn ist. Lass oben und unten eine Handbreit frei.',
  lensWhat: 'Die Hauptlinse, höchstens zweifacher Zoom.',
  lensWhy: 'Weitwinkel verbiegen die Ränder des Bildes.',
  rateWhat: 'Sechzig Bilder pro Sekunde, wenn das Handy sie hat.',
  rateWhy: 'Dreißig sind das Mindeste; Zeitlupe ist auch gut.',
  lightWhat: 'Das Licht hinter der Kamera.',
  lightWhy: 'Ein helles Bild ist ein scharfes.',
  discWhat: 'Die vordere Scheibe ganz im Bild.',
  discWhy: 'Kein Pfosten und niemand davor, von der ersten bis zur letzten Wiederholung.',
  setWhat: 'Den härtesten Satz, samt Ausgangsstellung, mit mindestens drei Wiederholungen.',
  setWhy: 'Schreib dazu, welche Last und welcher Satz es war und wie hart.',
  fileWhat: 'Schick die Datei selbst.',
  fileWhy: 'Was ein Chat verkleinert hat, hat Bilder und Zeiten verloren.',
  peopleWhat: 'Niemand sonst im Bild.',
  peopleWhy: 'Wer zu sehen ist, muss einverstanden sein; bei Minderjährigen die Sorgeberechtigten.',
  exercises: 'Deine Übungen',
  view: 'Film {view, select, side {von der Seite, rechtwinklig zum Weg des Gewichts} front {von vorn} rear {von hinten} other {von schräg vorn}}.',
  lensHeight:
    '{height, select, hip {Linse auf Höhe der Hüfte am tiefsten Punkt, etwa Kniehöhe.} bench {Linse auf Höhe der Bank.} other {Linse auf Höhe der Brust.}}',
  hold: 'Halt das Handy {turned, select, lengthways {quer} other {hochkant}}.',
} satisfies Readonly<Record<FilmMessageId, string>>;

/** The filming date; the advice itself comes from the filming card. */
export const calendar = {
  summary: 'Übungen filmen{count, plural, =0 {} other {: {exercises}}}',
} satisfies Readonly<Record<CalendarMessageId, string>>;
