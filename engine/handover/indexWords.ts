import type { Language } from '../language/language.ts';
import type { FileKind } from './handoverFolder.ts';

/** Every text of the page, with `{places}` for what it speaks of. */
export type IndexWords = {
  readonly title: string;
  readonly by: string;
  readonly files: string;
  readonly forPrograms: string;
  readonly clips: string;
  readonly noteCount: string;
  readonly noteCountOne: string;
  readonly clipTitle: string;
  readonly player: string;
  readonly missing: string;
  readonly scriptsOff: string;
  readonly notes: string;
  readonly noNotes: string;
  readonly reps: string;
  readonly jump: string;
  readonly play: string;
  readonly pause: string;
  readonly back: string;
  readonly on: string;
  readonly frameBack: string;
  readonly frameOn: string;
  readonly speed: string;
  readonly rate: string;
  readonly shown: string;
  readonly loadPath: string;
  readonly body: string;
  readonly cues: string;
  readonly keys: string;
  readonly knee: string;
  readonly trunk: string;
  readonly basis: string;
  readonly kinds: Readonly<Record<FileKind, string>>;
};

const english: IndexWords = {
  title: 'Review for {trainee}, {date}',
  by: 'Reviewed by {coach}.',
  files: 'Files',
  forPrograms: 'Data for other programs',
  clips: 'Clips',
  noteCount: '{count} notes',
  noteCountOne: '1 note',
  clipTitle: '{exercise}: {clip}',
  player: 'Clip {clip}',
  missing: 'This clip is not in the folder. Its notes are below.',
  scriptsOff: 'Scripts are off, so the notes can’t jump into the clips; the times tell where they belong.',
  notes: 'Notes',
  noNotes: 'No notes on this clip.',
  reps: 'Reps',
  jump: 'Jump',
  play: 'Play',
  pause: 'Pause',
  back: 'Note before (B)',
  on: 'Next note (N)',
  frameBack: 'One frame back',
  frameOn: 'One frame on',
  speed: 'Speed',
  rate: '{rate} ×',
  shown: 'Show over the picture',
  loadPath: 'Path of the load',
  body: 'Angles',
  cues: 'Notes',
  keys: 'Keys: N goes to the next note, B to the one before',
  knee: 'Knee',
  trunk: 'Trunk',
  basis: 'Coaching opinion from video; not medical advice. This page works without a network; keep it in its folder.',
  kinds: {
    letter: 'Letter',
    sheet: 'Review sheet',
    breakdown: 'Grade breakdown',
    filmingCard: 'How to film',
    notes: 'Timed notes',
    chapters: 'Chapters by rep',
    data: 'Data',
    measures: 'Measures',
    annotatedClip: 'Clip with notes in the picture',
    loop: 'Rep as a loop',
    calendar: 'Next filming date',
    other: 'File',
  },
};

const german: IndexWords = {
  title: 'Bewertung für {trainee}, {date}',
  by: 'Bewertet von {coach}.',
  files: 'Dateien',
  forPrograms: 'Daten für andere Programme',
  clips: 'Clips',
  noteCount: '{count} Notizen',
  noteCountOne: '1 Notiz',
  clipTitle: '{exercise}: {clip}',
  player: 'Clip {clip}',
  missing: 'Dieser Clip liegt nicht im Ordner. Seine Notizen stehen unten.',
  scriptsOff:
    'Skripte sind aus, deshalb können die Notizen nicht in die Clips springen; die Zeiten sagen, wohin sie gehören.',
  notes: 'Notizen',
  noNotes: 'Keine Notizen zu diesem Clip.',
  reps: 'Wiederholungen',
  jump: 'Springen',
  play: 'Abspielen',
  pause: 'Pause',
  back: 'Notiz davor (B)',
  on: 'Nächste Notiz (N)',
  frameBack: 'Ein Bild zurück',
  frameOn: 'Ein Bild weiter',
  speed: 'Tempo',
  rate: '{rate} ×',
  shown: 'Über dem Bild zeigen',
  loadPath: 'Weg der Last',
  body: 'Winkel',
  cues: 'Notizen',
  keys: 'Tasten: N geht zur nächsten Notiz, B zur Notiz davor',
  knee: 'Knie',
  trunk: 'Rumpf',
  basis:
    'Einschätzung eines Coachs nach Video; kein medizinischer Rat. Diese Seite braucht kein Netz; lass sie in ihrem Ordner.',
  kinds: {
    letter: 'Brief',
    sheet: 'Bewertungsbogen',
    breakdown: 'Notenübersicht',
    filmingCard: 'So wird gefilmt',
    notes: 'Notizen mit Zeiten',
    chapters: 'Kapitel nach Wiederholungen',
    data: 'Daten',
    measures: 'Messwerte',
    annotatedClip: 'Clip mit Notizen im Bild',
    loop: 'Wiederholung als Schleife',
    calendar: 'Nächster Filmtermin',
    other: 'Datei',
  },
};

/** The page's words by language. */
export const indexWords: Readonly<Record<Language, IndexWords>> = { en: english, de: german };
