const of = '{named, select, yes {{clip}: } other {}}';

/** What jobs are called, and what they are doing. */
export const jobWords = {
  demoSession: 'Demo',
  importFile: '{file}',
  readIntoInbox: '{count, plural, one {Read # clip into the inbox} other {Read # clips into the inbox}}',
  importReview: 'Review {file}',
  importHandover: 'Handover {file}',
  handOver: 'Hand over: {trainee}, {date}',
  measure: 'Measure: {clip}',
  playableCopyOf: 'Playable copy of {clip}',
  reading: `${of}Reading`,
  copying: `${of}Copying`,
  makingPictures: `${of}Making pictures`,
  makingCopy: `${of}Making a playable copy`,
  unpacking: `${of}Unpacking`,
  lookingForDisc: `${of}Looking for the disc`,
  lookingForDiscAndJoints: `${of}Looking for the disc and the joints`,
  followingPoint: `${of}Following the point`,
  stills: `${of}Stills`,
  annotatedClip: `${of}Annotated clip`,
  repLoop: `${of}Rep {rep}`,
  original: `${of}Original`,
  documents: 'Documents',
  finishing: 'Finishing',
  narratedFilmOf: 'Narrated video: {clip}',
  narratedFilm: `${of}Narrated video`,
} as const;
