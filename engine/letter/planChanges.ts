import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { compareSessions } from '../progress/faultChanges.ts';
import type { Review } from '../review/review.ts';
import { exerciseName } from '../sheet/flagRows.ts';
import type { Change } from './letterPlan.ts';

/** Good news first, then what stayed, then what came back. New faults are priorities. */
const order = ['gone', 'better', 'same', 'back', 'worse'] as const;

/** What the letter says of last time, against the trainee's own earlier sessions only. */
export function planChanges(review: Review, earlier: readonly Review[], catalogue: Catalogue): Change[] {
  return compareSessions(review, earlier, catalogue)
    .flatMap(({ kind, exercise, fault, before, now }): Change[] => {
      const name = findExercise(catalogue, exercise)?.faults.find(({ id }) => id === fault)?.name;
      if (name === undefined || kind === 'new') return [];
      return [{ kind, fault: name, exercise: exerciseName(catalogue, exercise), before, now }];
    })
    .sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
}
