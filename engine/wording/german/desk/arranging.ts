import type { ArrangingMessageId } from '../../english/desk/arranging.ts';

export const arranging = {
  menuOf: 'Mehr zu {name}',
  menu: 'Mehr',
  renameSession: 'Einheit umbenennen',
  renameClip: 'Clip umbenennen',
  title: 'Titel',
  clipName: 'Name des Clips',
  rename: 'Umbenennen',

  moveClip: 'Clip verschieben',
  moveEntry: 'Übung verschieben',
  moveSession:
    '{voice, select, self {Einheit jemand anderem zuordnen} other {Einheit einem anderen Athleten zuordnen}}',
  move: 'Verschieben',
  trainee: '{voice, select, self {Person} other {Athlet}}',
  session: 'Einheit',
  exercise: 'Übung',
  asItIs: '{exercise}, wie bisher',
  place: '{date}, {title}',
  noPlaces:
    '{voice, select, self {Es gibt keine Einheit, in die sich das verschieben lässt. Erst in der Übersicht eine anlegen} other {Dieser Athlet hat keine Einheit, in die sich das verschieben lässt. Leg erst in der Übersicht eine an}}.',
  noTrainee:
    '{voice, select, self {Es gibt sonst niemanden.} other {Es gibt keinen anderen Athleten. Leg erst einen an.}}',
  sentStay: '{voice, select, self {Festgehaltene} other {Verschickte}} Briefe bleiben bei der Einheit.',

  mergeSession: 'Einheiten eines Tages zusammenlegen',
  mergeInto: 'In welche Einheit',
  merge: 'Zusammenlegen',
  mergeWords:
    'Übungen, Clips und Notizen dieser Einheit kommen in die andere. Die leere Einheit liegt danach mit ihren {voice, select, self {festgehaltenen} other {verschickten}} Briefen im Papierkorb.',
  nothingToMerge:
    '{voice, select, self {Ich habe} other {Dieser Athlet hat}} an diesem Tag keine andere Einheit. Damit sich zwei zusammenlegen lassen, brauchen sie dasselbe Datum.',

  clipExercise: 'Übung dieses Clips',
  clipExerciseWords:
    'Der Clip kommt in dieser Einheit zur gewählten Übung. Bemerkungen und Haken, die zu ihr nicht passen, werden geparkt und gehen nicht verloren.',
  change: 'Ändern',

  clipRemoved: 'Im Papierkorb: {clip}.',
  entryRemoved: 'Im Papierkorb: {exercise}, mit {clips, plural, =0 {keinem Clip} one {# Clip} other {# Clips}}.',
  sessionRemoved: 'Im Papierkorb: {session}.',
  redone: 'Wiederholt: {act}',
  sessionFinished: 'Ohne Brief abgeschlossen: {session}.',
  sessionTakenUp: 'Wieder aufgenommen: {session}.',
  undo: 'Rückgängig',
  undone: 'Rückgängig gemacht: {act}.',
  dismiss: 'Ausblenden',

  parkedLine: 'Geparkt: {count, plural, one {# Bemerkung oder Haken} other {# Bemerkungen und Haken}}',
  parkedTitle: 'Geparkte Bemerkungen und Haken',
  parkedWords:
    'Sie passen nicht zu der Übung, als die ihr Clip jetzt bewertet wird, und zählen deshalb nicht. Bekommt der Clip die frühere Übung zurück, sind sie wieder da.',
  parkedFlag: '{what}: {severity}, {reps}',
  parkedNote: '{what}: Anmerkung, {reps}',
  parkedTicks: '{what}: {count, plural, one {# Haken} other {# Haken}}',
  parkedOf: '{exercise}, {clip}',
  wholeSet: 'ganzer Satz',
  reps: '{count, plural, one {Wiederholung {reps}} other {Wiederholungen {reps}}}',
  discard: 'Verwerfen',
  discardOf: 'Verwerfen: {what}',
  discardAll: 'Alles Geparkte dieses Clips verwerfen',
  noneParked: 'In dieser Einheit ist nichts geparkt.',

  bin: 'Papierkorb',
  binWords:
    'Was entfernt wurde, liegt hier {days} Tage und lässt sich zurückholen. Danach wird es samt Video endgültig gelöscht.',
  binEmpty: 'Der Papierkorb ist leer.',
  what: 'Was',
  from: 'Woher',
  removed: 'Entfernt',
  left: 'Noch',
  daysLeft: '{days, plural, =0 {bis zum nächsten Start} one {# Tag} other {# Tage}}',
  binSession: 'Einheit: {name}',
  binEntry: 'Übung: {name}',
  binClip: 'Clip: {name}',
  binFile: 'Aus dem Eingang: {name}',
  fromInbox: 'Eingang',
  binClips: '{count, plural, =0 {keine Clips} one {# Clip} other {# Clips}}',
  bringBack: 'Zurückholen',
  bringBackOf: 'Zurückholen: {name}',
  bringBackOrDelete: 'Zurückholen oder löschen',
  deleteNow: 'Jetzt löschen',
  deleteOf: 'Jetzt löschen: {name}',
  emptyBin: 'Papierkorb leeren',
  deleteForGood: 'Endgültig löschen',
  whatGoes:
    '{going, select, session {Gelöscht wird die Einheit mit {clips, plural, =0 {allen Bewertungen} one {ihrem Clip und allen Bewertungen} other {ihren # Clips und allen Bewertungen}}, ihrer Zweitbewertung, ihren Briefen und dem, was die Bibliothek von ihren Übergaben aufhebt.} entry {Gelöscht wird die Übung mit {clips, plural, =0 {allen Bewertungen} one {ihrem Clip und allen Bewertungen} other {ihren # Clips und allen Bewertungen}}.} clip {Gelöscht wird der Clip mit Bemerkungen, Zeichnungen, Messwerten und Audiokommentar.} file {Gelöscht wird die Kopie in der Bibliothek; die Datei, aus der sie stammt, bleibt, wo sie ist.} other {Gelöscht {things, plural, one {wird # Eintrag} other {werden alle # Einträge}} mit {clips, plural, =0 {keinem Clip} one {# Clip} other {# Clips}} und allem, was darin bewertet, verschickt und aufgenommen wurde.}} Videodateien, die noch ein anderer Clip zeigt, bleiben erhalten.',
  notUndone: 'Das lässt sich nicht rückgängig machen.',
  pictures: 'Bild',
} as const satisfies Readonly<Record<ArrangingMessageId, string>>;
