import type { Catalogue } from '../exercises/catalogue.ts';
import { setsDone } from '../review/parts.ts';
import type { Entry, Plan, Review } from '../review/review.ts';

/** Sets × repetitions × load, in kilograms; null where no load is planned. */
export function volumeLoadKg({ sets, reps, loadKg }: Plan): number | null {
  return loadKg === undefined ? null : sets * reps * loadKg;
}

/** What an indirect set counts for (Pelland et al. 2025, Sports Med: fractional counting fitted best). */
const indirectShare = 0.5;

export type MuscleSets = { readonly muscle: string; readonly sets: number };

const plannedSets = (entry: Entry): number => entry.setsDone ?? entry.plan?.sets ?? setsDone(entry);

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
