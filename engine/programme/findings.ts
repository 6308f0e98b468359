import type { Catalogue } from '../exercises/catalogue.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import { speechOf } from '../language/speech.ts';
import type { Review } from '../review/review.ts';
import { curtailedRangeFindings } from './curtailedRange.ts';
import { doubledLoadFindings } from './doubledLoad.ts';
import { loadOrderFindings } from './loadOrder.ts';
import { orderFindings } from './order.ts';
import { plannedEntries } from './plannedEntry.ts';
import { profileBalanceFindings } from './profileBalance.ts';
import { repRangeFindings } from './repRange.ts';
import { shortEndFindings } from './shortEnd.ts';
import { shortHoldFindings } from './shortHolds.ts';
import { spacingFindings, weeklyVolumeFindings } from './week.ts';

/**
 * What the plan of one session could do better for the trainee's goal: reps, order, load doubled up, work and
 * holds at the short end, range cut by the set-up; and, where earlier sessions are known, sets a week and days of rest. Advice, never
 * more than `adjust`. Empty for a session without any plan.
 */
export function programmeFindings(
  review: Review,
  catalogue: Catalogue,
  earlier: readonly Review[] = [],
): ProgrammeFinding[] {
  if (!review.entries.some((entry) => entry.plan !== undefined)) return [];
  const entries = plannedEntries(review, catalogue);
  const { goal } = review.trainee;
  const speech = speechOf(catalogue);
  return [
    ...repRangeFindings(entries, goal, speech),
    ...orderFindings(entries, goal, speech),
    ...loadOrderFindings(entries, goal, speech),
    ...doubledLoadFindings(entries, speech),
    ...shortEndFindings(entries, goal, catalogue, speech),
    ...shortHoldFindings(entries, goal, speech),
    ...curtailedRangeFindings(entries, goal, catalogue, speech),
    ...profileBalanceFindings(entries, goal, speech),
    ...weeklyVolumeFindings(review, earlier, catalogue),
    ...spacingFindings(review, earlier, catalogue),
  ];
}
