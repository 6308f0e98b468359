import type { FlagRow } from './flagRows.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

/** Which reps a flag speaks of: "Rep 2", "Reps 1, 3", "Whole set". */
export function sayReps({ reps }: FlagRow, { say }: SheetLanguage): string {
  if (reps === null) return say('inSet');
  return say('inReps', { count: reps.length, reps: reps.join(', ') });
}
