import type { Catalogue } from '../exercises/catalogue.ts';
import type { Review } from '../review/review.ts';
import type { ProgrammeFinding } from './finding.ts';
import { longEndFindings } from './longEnd.ts';
import { doubledLoadFindings, loadOrderFindings, orderFindings } from './order.ts';
import { plannedEntries } from './plannedEntry.ts';
import { repRangeFindings } from './repRange.ts';
import { spacingFindings, weeklyVolumeFindings } from './week.ts';

/**
 * What the plan of one session could do better for the trainee's goal: reps, order, load doubled up, work and holds at
 * the short end, range cut by the set-up; and, where earlier sessions are known, sets a week and days of rest. Advice,
 * never more than `adjust`. Empty for a session without any plan.
 */
export function programmeFindings(
  review: Review,
  catalogue: Catalogue,
  earlier: readonly Review[] = [],
): ProgrammeFinding[] {
  if (!review.entries.some((entry) => entry.plan !== undefined)) return [];
  const entries = plannedEntries(review, catalogue);
  const { goal } = review.trainee;
  return [
    ...repRangeFindings(entries, goal),
    ...orderFindings(entries, goal),
    ...loadOrderFindings(entries, goal),
    ...doubledLoadFindings(entries),
    ...(goal === 'growth' ? longEndFindings(entries, catalogue) : []),
    ...weeklyVolumeFindings(review, earlier, catalogue),
    ...spacingFindings(review, earlier, catalogue),
  ];
}
