import type { Catalogue } from '../exercises/catalogue.ts';
import { compareSessions, type FaultChange } from '../progress/compareSessions.ts';
import type { Review } from '../review/review.ts';
import { exerciseName } from '../sheet/flagRows.ts';
import type { Change } from './letterPlan.ts';

/** Good news first, then what came back; what is new is told as something to change, what is the same not at all. */
const order = ['gone', 'better', 'back', 'worse'] as const;

const isTold = (kind: FaultChange['kind']): kind is Change['kind'] => order.some((known) => known === kind);

/** What the letter says of last time, against the trainee's own earlier sessions only. */
export function planChanges(review: Review, earlier: readonly Review[], catalogue: Catalogue): Change[] {
  return compareSessions(review, earlier, catalogue)
    .flatMap(({ kind, exercise, fault, before, now }): Change[] => {
      const name = catalogue.exercises.find(({ id }) => id === exercise)?.faults.find(({ id }) => id === fault)?.name;
      return name === undefined || !isTold(kind)
        ? []
        : [{ kind, fault: name, exercise: exerciseName(catalogue, exercise), before, now }];
    })
    .sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
}
