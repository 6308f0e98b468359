import type { Catalogue } from '../exercises/catalogue.ts';
import type { Goal } from '../exercises/exercise.ts';
import type { Review } from '../review/review.ts';
import { type PlannedEntry, type ProgrammeFinding, plannedEntries } from './finding.ts';
import { longEndFindings } from './longEnd.ts';
import { doubledLoadFindings, loadOrderFindings, orderFindings } from './order.ts';
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

/** Reps a set that suit a training goal. */
const growth = { from: 5, to: 30 } as const;
const strength = { from: 1, to: 6 } as const;
/** More repetitions in reserve than this, and a set counts as easy. */
const hardUpToInReserve = 4;

function outside({ entry, exercise, plan }: PlannedEntry, goal: Goal): ProgrammeFinding[] {
  const range = goal === 'growth' ? growth : goal === 'strength' && exercise.compound ? strength : null;
  if (plan === undefined || range === null || exercise.beginsWith === 'hold') return [];
  if (plan.reps >= range.from && plan.reps <= range.to) return [];
  return [
    {
      id: `rep-range-${entry.id}`,
      kind: 'rep-range',
      weight: 'adjust',
      entryIds: [entry.id],
      message: {
        id: goal === 'growth' ? 'repsForGrowth' : 'repsForStrength',
        values: { exercise: exercise.name, reps: plan.reps, ...range },
      },
    },
  ];
}

function easy({ entry, exercise, plan }: PlannedEntry, goal: Goal): ProgrammeFinding[] {
  if (goal !== 'growth' || plan?.repsInReserve === undefined || plan.repsInReserve <= hardUpToInReserve) return [];
  return [
    {
      id: `effort-${entry.id}`,
      kind: 'effort',
      weight: 'prefer',
      entryIds: [entry.id],
      message: {
        id: 'effort',
        values: { exercise: exercise.name, reps: plan.repsInReserve, enough: hardUpToInReserve - 1 },
      },
    },
  ];
}

/** Plans whose reps don't fit the goal: growth 5-30 and near failure, strength 1-6 on lifts of several joints. */
const repRangeFindings = (entries: readonly PlannedEntry[], goal: Goal): ProgrammeFinding[] =>
  entries.flatMap((planned) => [...outside(planned, goal), ...easy(planned, goal)]);
