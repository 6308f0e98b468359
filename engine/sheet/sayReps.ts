import { fill } from '../language/fill.ts';
import type { FlagRow } from './flagRows.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

/** Which reps a flag speaks of: "Rep 2", "Reps 1, 3", "Whole set". */
export function sayReps({ reps }: FlagRow, { words }: SheetLanguage): string {
  if (reps === null) return words.inSet;
  return fill(reps.length === 1 ? words.inRep : words.inReps, { reps: reps.join(', ') });
}
