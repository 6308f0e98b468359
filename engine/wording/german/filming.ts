import type { CalendarMessageId, FilmMessageId } from '../english/filming.ts';

/** How to film. */
export const film = {
  title: 'So wird gefilmt',
  safety: 'Sicherheit zuerst',
  pathWhat: 'Handy und Stativ aus dem Weg.',
  pathWhy: 'Nicht im Durchgang, nicht im Weg der Stange und nicht dort, wo jemand darüber stolpert.',
  catchWhat: 'Sicherheitsablagen einstellen, oder jemand sichert.',
  catchWhy: 'Vor der ersten Wiederholung und etwas unter der tiefsten Stelle, die die Stange erreicht.',
  aloneWhat: 'Nie allein bis ans Limit.',
  aloneWhy:
    'Wer allein ist, hört auf, solange noch drei saubere Wiederholungen drin wären, auch wenn die Kamera läuft.',
  painWhat: 'Aufhören, wenn etwas wehtut.',
  painWhy: 'Kein Clip ist eine Wiederholung mit Schmerzen wert.',
  minorsWhat: 'Minderjährige nur mit Einwilligung der Sorgeberechtigten.',
  minorsWhy:
    'Sie gilt für das Filmen und das Aufbewahren der Aufnahmen. Eine erwachsene Person, die anleiten kann, ist dabei.',
  advice: 'Gute Aufnahmen',
  stillWhat: 'Stell das Handy fest hin.',
  stillWhy: 'Auf ein Stativ, ein Regal oder einen Scheibenstapel: Eine bewegte Kamera macht jede Linie krumm.',
  distanceWhat: 'Drei bis fünf Meter Abstand.',
  distanceWhy: 'Näher dran wirkt zu groß, was vorn ist. Lass oben und unten eine Handbreit frei.',
  lensWhat: 'Die Hauptkamera, höchstens zweifacher Zoom.',
  lensWhy: 'Weitwinkel verzerrt die Ränder des Bildes.',
  rateWhat: 'Sechzig Bilder pro Sekunde, wenn das Handy das kann.',
  rateWhy: 'Dreißig sind das Mindeste; Zeitlupe ist auch gut.',
  lightWhat: 'Das Licht hinter der Kamera.',
  lightWhy: 'Ein helles Bild ist ein scharfes.',
  discWhat: 'Die vordere Scheibe ganz im Bild.',
  discWhy: 'Kein Pfosten und niemand davor, von der ersten bis zur letzten Wiederholung.',
  setWhat:
    '{effort, select, hardest {Den härtesten Satz} other {Einen leichten Satz}}, samt Startposition, mit mindestens drei Wiederholungen.',
  setWhy: 'Schreib dazu, welche Last und welcher Satz es war und wie viele Wiederholungen noch drin waren.',
  fileWhat: 'Die Datei so, wie sie vom Handy kommt.',
  fileWhy: 'Was ein Chat verkleinert hat, hat Bilder und Zeiten verloren.',
  peopleWhat: 'Niemand sonst im Bild.',
  peopleWhy: 'Wer zu sehen ist, muss einverstanden sein; bei Minderjährigen die Sorgeberechtigten.',
  exercises: 'Übung für Übung',
  view: 'Film {view, select, side {von der Seite, rechtwinklig zum Weg der Last} front {von vorn} rear {von hinten} other {von schräg vorn}}.',
  lensHeight:
    '{height, select, hip {Kamera auf Höhe der Hüfte am tiefsten Punkt, etwa Kniehöhe.} bench {Kamera auf Höhe der Bank.} other {Kamera auf Brusthöhe.}}',
  hold: 'Halt das Handy {turned, select, lengthways {quer} other {hochkant}}.',
} satisfies Readonly<Record<FilmMessageId, string>>;

/** The filming date; its text is the page on how to film. */
export const calendar = {
  summary: 'Filmtag{count, plural, =0 {} other {: {exercises}}}',
  clinicianFirst: 'Vor dem nächsten Clip: ärztlich abklären lassen',
} satisfies Readonly<Record<CalendarMessageId, string>>;
