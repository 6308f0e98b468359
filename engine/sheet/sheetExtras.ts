import type { SetMeasurement } from '../motion/measurement.ts';

/** What a sheet may hold beside the review. */
export type SheetExtras = {
  /** What was measured, by the clip's id. */
  readonly measures?: ReadonlyMap<string, SetMeasurement>;
  /** Names of the files with a flag's still, by the flag's id, as they lie beside the sheet. */
  readonly stills?: ReadonlyMap<string, string>;
};
