import type { Catalogue } from '../exercises/catalogue.ts';
import type { Review } from '../review/review.ts';
import type { ProgrammeFinding } from './finding.ts';
import { fractionalSets, weeklyBand } from './trainingVolume.ts';

const dayMs = 86_400_000;

/** Whole days from one ISO date to another. */
export function daysBetween(earlier: string, later: string): number {
  return Math.round((Date.parse(`${later}T00:00:00Z`) - Date.parse(`${earlier}T00:00:00Z`)) / dayMs);
}

/** Earlier sessions within the seven days that end with the session's day. */
function sameWeek(review: Review, earlier: readonly Review[]): Review[] {
  return earlier.filter((other) => {
    const days = daysBetween(other.session.date, review.session.date);
    return days >= 0 && days < 7;
  });
}

/** Muscles over the weekly band, when at least one earlier session of the week is known. */
export function weeklyVolumeFindings(
  review: Review,
  earlier: readonly Review[],
  catalogue: Catalogue,
): ProgrammeFinding[] {
  const week = sameWeek(review, earlier);
  if (week.length === 0 || review.trainee.goal !== 'growth') return [];
  const high = fractionalSets([...week, review], catalogue).filter(({ sets }) => weeklyBand(sets) === 'high');
  if (high.length === 0) return [];
  return [
    {
      id: 'weekly-volume-high',
      kind: 'weekly-volume',
      weight: 'prefer',
      entryIds: [],
      message: { id: 'weeklyVolume', values: { muscles: high.map(({ muscle }) => muscle) } },
    },
  ];
}

/** Days of rest after which a muscle is ready again for hard sets. */
const restDays = 2;

/** Muscles that were trained directly on the day before, by sets near failure. */
export function spacingFindings(review: Review, earlier: readonly Review[], catalogue: Catalogue): ProgrammeFinding[] {
  const recent = earlier.filter((other) => {
    const days = daysBetween(other.session.date, review.session.date);
    return days >= 0 && days < restDays && other !== review;
  });
  const directOf = (reviews: readonly Review[]): Set<string> =>
    new Set(
      reviews
        .flatMap((one) => one.entries)
        .filter(({ plan }) => (plan?.repsInReserve ?? 0) <= 2)
        .flatMap(({ exercise: id }) => catalogue.exercises.find((known) => known.id === id)?.muscles.direct ?? []),
    );
  const before = directOf(recent);
  const again = [...directOf([review])].filter((muscle) => before.has(muscle));
  if (again.length === 0) return [];
  return [
    {
      id: 'spacing',
      kind: 'spacing',
      weight: 'prefer',
      entryIds: [],
      message: { id: 'spacing', values: { muscles: again } },
    },
  ];
}
