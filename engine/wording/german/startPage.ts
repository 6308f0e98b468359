import type { StartPageMessageId } from '../english/startPage.ts';

/** The start page of a handover. */
export const startPage = {
  title: 'Bewertung für {trainee}, {date}',
  by: 'Bewertet von {coach}.',
  grade: 'Note',
  score: '{score} von 100',
  scoreForNow: '{score} von 100, vorläufig',
  noGrade: 'Diesmal keine Note',
  hello: 'Hallo {name}.',
  stopFirst:
    '{voice, select, self {In dieser Einheit war etwas unsicher: Vor dem nächsten Satz lese ich den Hinweis oben.} other {In dieser Einheit war etwas unsicher: Lies vor dem nächsten Satz den Hinweis oben.}}',
  painFirst:
    '{voice, select, self {Zuerst kommt der Hinweis zu meinen Schmerzen oben.} other {Lies bitte zuerst den Hinweis zu deinen Schmerzen oben.}}',
  keepIt: '{criterion}: genau so beibehalten.',
  keepItIn: '{criterion} ({exercise}): genau so beibehalten.',
  cueForNext:
    '{voice, select, self {Mein Hinweis fürs nächste Mal: „{cue}“} other {Dein Hinweis fürs nächste Mal: „{cue}“}}',
  workOn:
    '{voice, select, self {Daran arbeite ich als Nächstes: {what}.} other {Daran arbeitest du als Nächstes: {what}.}}',
  nothingToChange: 'Nichts zu ändern. Mach genau so weiter.',
  files: 'Dokumente',
  read: 'Lesen',
  print: 'Drucken (PDF)',
  calendar: 'In den Kalender',
  otherFormats: 'Weitere Formate und Daten',
  clips: 'Clips',
  more: 'Mehr zu diesem Clip',
  noteCount: '{count, plural, one {# Notiz} other {# Notizen}}',
  clipTitle: '{exercise}: {clip}',
  player: 'Clip {clip}',
  ownTime:
    'Der Clip mit Notizen im Bild beginnt mit einem Titel und kann bei einer Notiz anhalten oder langsamer laufen. Die Uhr in der Ecke zeigt die Zeiten aus Brief und Bewertungsbogen.',
  missing: 'Dieser Clip liegt nicht im Ordner. Seine Notizen stehen unten.',
  scriptsOff:
    'Skripte sind aus, deshalb können die Notizen nicht in die Clips springen; die Zeiten zeigen, wohin sie gehören.',
  notes: 'Notizen',
  noNotes: 'Keine Notizen zu diesem Clip.',
  reps: 'Wiederholungen',
  jump: 'Springen',
  play: 'Abspielen',
  pause: 'Pause',
  back: 'Vorige Notiz',
  on: 'Nächste Notiz',
  position: 'Stelle im Clip',
  fullScreen: 'Vollbild',
  frameBack: 'Ein Bild zurück',
  frameOn: 'Ein Bild weiter',
  speed: 'Tempo',
  rate: '{rate} ×',
  shown: 'Über dem Bild zeigen',
  loadPath: 'Weg der Last',
  body: 'Winkel',
  cues: 'Notizen',
  keys: 'Tasten: N geht zur nächsten Notiz, B zur vorigen',
  knee: 'Knie',
  trunk: 'Rumpf',
  basis:
    'Einschätzung eines Coachs nach Video; kein medizinischer Rat. Diese Seite braucht kein Netz; lass sie in ihrem Ordner.',
  kind: '{kind, select, letter {Brief} sheet {Bewertungsbogen} breakdown {Notenübersicht} filmingCard {So wird gefilmt} notes {Notizen mit Zeiten} chapters {Kapitel nach Wiederholungen} data {Daten} measures {Messwerte} annotatedClip {Clip mit Notizen im Bild} loop {Wiederholung als Schleife} calendar {Nächster Filmtermin} other {Datei}}',
} satisfies Readonly<Record<StartPageMessageId, string>>;
