import type { jobWords as english } from '../english/jobWords.ts';

const of = '{named, select, yes {{clip}: } other {}}';

export const jobWords = {
  demoSession: 'Demo',
  importFile: '{file}',
  readIntoInbox: '{count, plural, one {# Clip in den Eingang einlesen} other {# Clips in den Eingang einlesen}}',
  importReview: 'Bewertung {file}',
  importHandover: 'Übergabe {file}',
  handOver: 'Übergeben: {trainee}, {date}',
  measure: 'Messen: {clip}',
  playableCopyOf: 'Abspielbare Kopie von {clip}',
  reading: `${of}Lesen`,
  copying: `${of}Kopieren`,
  makingPictures: `${of}Bilder erzeugen`,
  makingCopy: `${of}Abspielbare Kopie erzeugen`,
  unpacking: `${of}Auspacken`,
  lookingForDisc: `${of}Scheibe suchen`,
  lookingForDiscAndJoints: `${of}Scheibe und Gelenke suchen`,
  followingPoint: `${of}Punkt verfolgen`,
  stills: `${of}Standbilder`,
  annotatedClip: `${of}Clip mit Notizen`,
  repLoop: `${of}Wiederholung {rep}`,
  original: `${of}Original`,
  documents: 'Dokumente',
  finishing: 'Abschluss',
  narratedFilmOf: 'Video mit Audiokommentar: {clip}',
  narratedFilm: `${of}Video mit Audiokommentar`,
} as const satisfies Readonly<Record<keyof typeof english, string>>;
