import type { Catalogue } from '../exercises/catalogue.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Review } from '../review/index.ts';
import { doubledLoadFindings } from './doubledLoad.ts';
import { orderFindings } from './order.ts';
import { plannedEntries } from './plannedEntry.ts';
import { repRangeFindings } from './repRange.ts';
import { shortEndFindings } from './shortEnd.ts';

/**
 * What the plan of one session could do better for the trainee's goal: reps, order, load doubled up, work at the
 * short end. Advice, never more than `adjust`. Empty for a session without any plan.
 */
export function programmeFindings(review: Review, catalogue: Catalogue): ProgrammeFinding[] {
  if (!review.entries.some((entry) => entry.plan !== undefined)) return [];
  const entries = plannedEntries(review, catalogue);
  const { goal } = review.trainee;
  return [
    ...repRangeFindings(entries, goal),
    ...orderFindings(entries, goal),
    ...doubledLoadFindings(entries),
    ...shortEndFindings(entries, goal, catalogue),
  ];
}
