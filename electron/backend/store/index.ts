/** The library's file: the only place that opens SQLite. Every function takes the connection first. */
export { type ActOutcome, perform, recordAct } from './acts.ts';
export type { Changes } from './changes.ts';
export { type ClipHome, type ClipRow, findClip, listClips, listClipsAlike, nextClipOrdinal } from './clips.ts';
export { inTransaction, type Reading, type Writing } from './connection.ts';
export {
  type CoverRow,
  coverColumns,
  coverOf,
  findCover,
  listCovers,
  listCoversOfSession,
  nextCoverOrdinal,
} from './covers.ts';
export { type DrawingRow, drawingOf, drawnColumns, findDrawing, listDrawings, nextDrawingOrdinal } from './drawings.ts';
export { type EntryRow, findEntry, listEntries, nextEntryOrdinal, planColumns, planOf } from './entries.ts';
export {
  type FlagRow,
  findFlag,
  flagIdsOfRep,
  flagOf,
  listFlags,
  nextFlagOrdinal,
  numbersOf,
  repIdsOfFlag,
} from './flags.ts';
export { type LibraryFolder, libraryFolder, partSuffix } from './folder.ts';
export {
  type FootageRow,
  factsOf,
  findFootage,
  findFootageByContent,
  footageOfClip,
  insertFootage,
  sessionShowsFootage,
  sessionsOfFootage,
  setProxyFile,
} from './footage.ts';
export { readFrameTable, readFrameTicks, writeFrameTable } from './frameTables.ts';
export {
  changedSince,
  type HandoverRow,
  insertDelivery,
  insertHandover,
  listAllHandovers,
  listDeliveries,
  listHandovers,
  newestAct,
} from './handovers.ts';
export { listHistory, readHistoryState, redo, undo } from './history.ts';
export {
  findJob,
  findOpenMeasuring,
  finishJob,
  insertJob,
  type JobLane,
  type JobRow,
  listJobs,
  nextWaitingJob,
  recoverJobs,
  setJobState,
} from './jobs.ts';
export type { Row } from './journaledTables.ts';
export { type LetterEditRow, listLetterEdits } from './letterEdits.ts';
export { createLibrary, type Library, type LibraryFacts, openLibrary, readLibraryFacts } from './library.ts';
export { frameOf, momentColumns } from './moments.ts';
export { overrideColumns } from './overrides.ts';
export { readPlace, writePlace } from './places.ts';
export { readReview } from './readReview.ts';
export {
  clicksKey,
  findRecordingStamp,
  type Recorded,
  type RecordedParts,
  type RecordingPart,
  type RecordingStamp,
  readRecordedParts,
  writeRecordedParts,
} from './recordings.ts';
export {
  type EdgeColumn,
  edgeColumns,
  edgeMoment,
  edgeOf,
  listReps,
  measuredEdges,
  type RepRow,
  repOf,
} from './reps.ts';
export { findSentLetter, insertSentLetter, listSentLetters, type SentLetterRow } from './sentLetters.ts';
export {
  assertWritable,
  findSecondLook,
  findSession,
  listSessions,
  listSessionsBefore,
  listSessionsOf,
  type SessionRow,
} from './sessions.ts';
export { findSetUp, readSetUp, setUpRow } from './setUps.ts';
export { listSuggestionAnswers, type SuggestionAnswerRow } from './suggestionAnswers.ts';
export { listTicks } from './ticks.ts';
export { findTrainee, listTrainees, traineeColumns, traineeOf } from './trainees.ts';
export { verifyDatabase } from './verify.ts';
