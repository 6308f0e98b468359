/** The sheet: every flag with its time, as a document, as a table for spreadsheets, and as timed notes for players. */
export { criterionName, exerciseName, type FlagRow, flagRows } from './flagRows.ts';
export { sheetCsv } from './sheetCsv.ts';
export { sheetWebVtt } from './sheetWebVtt.ts';
export { strokes } from './strokes.ts';
export { writeSheet } from './writeSheet.ts';
