import type { Catalogue } from '../exercises/catalogue.ts';
import { setsDone } from '../review/parts.ts';
import type { Plan } from '../review/plan.ts';
import type { Entry, Review } from '../review/review.ts';
import type { ProgrammeFinding } from './finding.ts';

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
        .filter(({ plan }) => plan?.sets.some(({ repsInReserve }) => (repsInReserve ?? 0) <= 2) ?? true)
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

/** Repetitions × load over all sets, in kilograms; null where the load of a set is not stated. */
export function volumeLoadKg({ sets }: Plan): number | null {
  const volumes = sets.flatMap(({ reps, loadKg }) => (loadKg === undefined ? [] : [reps * loadKg]));
  return volumes.length < sets.length ? null : volumes.reduce((sum, one) => sum + one, 0);
}

/** What an indirect set counts for (Pelland et al. 2025, Sports Med: fractional counting fitted best). */
const indirectShare = 0.5;

export type MuscleSets = { readonly muscle: string; readonly sets: number };

const plannedSets = (entry: Entry): number => entry.setsDone ?? entry.plan?.sets.length ?? setsDone(entry);

/** Fractional sets per muscle: a direct set counts 1, an indirect one a half; most sets first, then by name. */
export function fractionalSets(reviews: readonly Review[], catalogue: Catalogue): MuscleSets[] {
  const sets = new Map<string, number>();
  const add = (muscle: string, amount: number): void => {
    sets.set(muscle, (sets.get(muscle) ?? 0) + amount);
  };
  for (const entry of reviews.flatMap((review) => review.entries)) {
    const exercise = catalogue.exercises.find((known) => known.id === entry.exercise);
    if (exercise === undefined) continue;
    for (const muscle of exercise.muscles.direct) add(muscle, plannedSets(entry));
    for (const muscle of exercise.muscles.indirect) add(muscle, plannedSets(entry) * indirectShare);
  }
  return [...sets]
    .map(([muscle, amount]) => ({ muscle, sets: amount }))
    .sort((a, b) => b.sets - a.sets || (a.muscle < b.muscle ? -1 : 1));
}

/** Bands of fractional sets a week (Schoenfeld et al. 2017, J Sports Sci 35:1073, and a 2022 meta-analysis for the upper one). */
export function weeklyBand(sets: number): 'low' | 'moderate' | 'target' | 'high' {
  if (sets < 5) return 'low';
  if (sets < 10) return 'moderate';
  return sets <= 20 ? 'target' : 'high';
}
