import type { StartPageMessageId } from '../english/startPage.ts';

/** The start page of a handover. */
export const startPage = {
  title: 'Bewertung für {trainee}, {date}',
  by: 'Bewertet von {coach}.',
  files: 'Dateien',
  forPrograms: 'Daten für andere Programme',
  clips: 'Clips',
  noteCount: '{count, plural, one {# Notiz} other {# Notizen}}',
  clipTitle: '{exercise}: {clip}',
  player: 'Clip {clip}',
  missing: 'Dieser Clip liegt nicht im Ordner. Seine Notizen stehen unten.',
  scriptsOff:
    'Skripte sind aus, deshalb können die Notizen nicht in die Clips springen; die Zeiten zeigen, wohin sie gehören.',
  notes: 'Notizen',
  noNotes: 'Keine Notizen zu diesem Clip.',
  reps: 'Wiederholungen',
  jump: 'Springen',
  play: 'Abspielen',
  pause: 'Pause',
  back: 'Vorige Notiz (B)',
  on: 'Nächste Notiz (N)',
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
