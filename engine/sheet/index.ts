/**
 * The sheet: every flag with its time, as a document, as data, as tables for spreadsheets, and as timed notes for
 * players; with what was measured where it is handed in.
 */
export { criterionName, exerciseName, type FlagRow, flagRows } from './flagRows.ts';
export { measuresCsv } from './measuresCsv.ts';
export type { Cue } from './notes/layNotes.ts';
export { type NotesOf, type TimedNotes, timedNotes } from './notes/timedNotes.ts';
export { repChapters } from './repChapters.ts';
export { sayReps } from './sayReps.ts';
export { sheetCsv } from './sheetCsv.ts';
export { type SheetExtras, type SheetLength, sheetLengths } from './sheetExtras.ts';
export { sheetData, sheetJson } from './sheetJson.ts';
export { type SheetData, sheetSchema } from './sheetJsonSchema.ts';
export { type SheetLanguage, sheetLanguage } from './sheetLanguage.ts';
export { sheetSubRip } from './sheetSubRip.ts';
export { sheetWebVtt } from './sheetWebVtt.ts';
export { strokes } from './strokes.ts';
export { writeSheet } from './writeSheet.ts';
