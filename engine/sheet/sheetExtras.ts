import type { SetMeasurement } from '../motion/measurement.ts';

/** How much a sheet tells: `short` is the grades and every flag, on a page or two. */
export const sheetLengths = ['full', 'short'] as const;
export type SheetLength = (typeof sheetLengths)[number];

/** What a sheet may hold beside the review. */
export type SheetExtras = {
  /** Full without it. */
  readonly length?: SheetLength;
  /** What was measured, by the clip's id. */
  readonly measures?: ReadonlyMap<string, SetMeasurement>;
  /** Names of the files with a flag's still, by the flag's id, as they lie beside the sheet. */
  readonly stills?: ReadonlyMap<string, string>;
};
