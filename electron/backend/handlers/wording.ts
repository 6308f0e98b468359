import { type Catalogue, findExercise } from '../../../engine/exercises/catalogue.ts';
import type { Reps } from '../../../engine/review/review.ts';
import type { Weight } from '../../../engine/rubric/rubric.ts';

const list = new Intl.ListFormat('en-GB', { style: 'long', type: 'conjunction' });

/** "rep 2", "reps 1, 2 and 4", "whole set". */
export function repsInWords(reps: Reps): string {
  if (reps === 'set') return 'whole set';
  return reps.length === 1 ? `rep ${reps[0]}` : `reps ${list.format(reps.map(String))}`;
}

/** The name of an exercise, or its id where the catalogue has none. */
export function exerciseName(catalogue: Catalogue, exerciseId: string): string {
  return findExercise(catalogue, exerciseId)?.name ?? exerciseId;
}

/** The name of a criterion, or its id where the rubric has none. */
export function criterionName(catalogue: Catalogue, criterionId: string): string {
  return catalogue.rubric.criteria.find((each) => each.id === criterionId)?.name ?? criterionId;
}

/** What a flag says, for the history: "Flag: Short of depth, rep 2", "Praise: Depth, whole set". */
export function flagInWords(
  catalogue: Catalogue,
  flag: {
    readonly exercise: string;
    readonly criterion: string;
    readonly fault: string | null;
    readonly weight: Weight;
    readonly reps: Reps;
  },
): string {
  const fault = findExercise(catalogue, flag.exercise)?.faults.find((each) => each.id === flag.fault);
  const what = fault?.name ?? criterionName(catalogue, flag.criterion);
  return `${flag.weight === 'keep' ? 'Praise' : 'Flag'}: ${what}, ${repsInWords(flag.reps)}`;
}
