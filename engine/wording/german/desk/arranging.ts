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
  moveSession: '{voice, select, self {Einheit jemand anderem geben} other {Einheit einem anderen Athleten geben}}',
  move: 'Verschieben',
  trainee: '{voice, select, self {Person} other {Athlet}}',
  session: 'Einheit',
  exercise: 'Übung',
  asItIs: '{exercise}, wie jetzt',
  place: '{date}, {title}',
  noPlaces:
    '{voice, select, self {Es gibt keine andere Einheit} other {Dieser Athlet hat keine andere Einheit}}. Erst auf dem Schreibtisch eine anlegen.',
  noTrainee:
    '{voice, select, self {Es gibt sonst niemanden.} other {Es gibt keinen anderen Athleten. Leg erst einen an.}}',
  sentStay: 'Verschickte Briefe bleiben bei ihr.',

  mergeSession: 'Einheiten eines Tages zusammenlegen',
  mergeInto: 'In welche Einheit',
  merge: 'Zusammenlegen',
  mergeWords:
    'Übungen, Clips und Notizen kommen in die andere Einheit. Die leere Einheit liegt danach mit ihren verschickten Briefen im Papierkorb.',
  nothingToMerge:
    '{voice, select, self {Ich habe} other {Dieser Athlet hat}} keine andere Einheit an diesem Tag. Ändere erst das Datum einer der beiden.',

  clipExercise: 'Übung dieses Clips',
  clipExerciseWords:
    'Der Clip kommt zu dieser Übung in der Einheit. Was dort nichts bedeutet, wird geparkt und geht nicht verloren.',
  change: 'Ändern',

  clipRemoved: 'Im Papierkorb: {clip}.',
  entryRemoved: 'Im Papierkorb: {exercise}, mit {clips, plural, =0 {keinem Clip} one {# Clip} other {# Clips}}.',
  sessionRemoved: 'Im Papierkorb: {session}.',
  undo: 'Rückgängig',
  undone: 'Rückgängig gemacht: {act}.',
  dismiss: 'Ausblenden',

  parkedLine: 'Geparkt: {count, plural, one {# Bemerkung oder Haken} other {# Bemerkungen und Haken}}',
  parkedTitle: 'Geparkte Bemerkungen und Haken',
  parkedWords:
    'Für die Übung, als die der Clip jetzt bewertet wird, bedeuten sie nichts und zählen nicht. Mit der früheren Übung kommen sie zurück.',
  parkedFlag: '{what}: {severity}, {reps}',
  parkedNote: '{what}: Kommentar, {reps}',
  parkedTicks: '{what}: {count, plural, one {# Haken} other {# Haken}}',
  parkedOf: '{exercise}, {clip}',
  wholeSet: 'ganzer Satz',
  reps: '{count, plural, one {Wiederholung {reps}} other {Wiederholungen {reps}}}',
  discard: 'Verwerfen',
  discardOf: 'Verwerfen: {what}',
  discardAll: 'Alles an diesem Clip verwerfen',
  noneParked: 'In dieser Einheit ist nichts geparkt.',

  bin: 'Papierkorb',
  binWords:
    'Was entfernt wurde, liegt hier {days} Tage lang und lässt sich zurückholen. Danach wird es mit seinen Videodateien gelöscht.',
  binEmpty: 'Der Papierkorb ist leer.',
  what: 'Was',
  from: 'Woher',
  removed: 'Entfernt',
  left: 'Noch',
  daysLeft: '{days, plural, =0 {bis zum nächsten Start} one {# Tag} other {# Tage}}',
  binSession: 'Einheit: {name}',
  binEntry: 'Übung: {name}',
  binClip: 'Clip: {name}',
  binClips: '{count, plural, =0 {keine Clips} one {# Clip} other {# Clips}}',
  bringBack: 'Zurückholen',
  bringBackOf: 'Zurückholen: {name}',
  pictures: 'Bild',
} as const satisfies Readonly<Record<ArrangingMessageId, string>>;
