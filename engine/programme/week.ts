import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { PlannedSet } from '../review/plan.ts';
import type { Entry, Review } from '../review/review.ts';
import type { ProgrammeFinding } from './finding.ts';
import { hardSets } from './hardSets.ts';
import { indirectShare } from './volume.ts';

/** What the findings over the week need of a session: its day, and what was planned and done. A review is one. */
export type TrainedSession = {
  readonly session: { readonly date: string };
  readonly entries: readonly TrainedEntry[];
};
export type TrainedEntry = Pick<Entry, 'exercise' | 'plan' | 'setsDone'> & { readonly clips: readonly unknown[] };

const dayMs = 86_400_000;

/** Whole days from one ISO date to another. */
function daysBetween(earlier: string, later: string): number {
  return Math.round((Date.parse(`${later}T00:00:00Z`) - Date.parse(`${earlier}T00:00:00Z`)) / dayMs);
}

/** The sessions within so many days that end with a day. */
export const within = <Session extends TrainedSession>(
  sessions: readonly Session[],
  { date, days }: { readonly date: string; readonly days: number },
): Session[] =>
  sessions.filter((one) => {
    const ago = daysBetween(one.session.date, date);
    return ago >= 0 && ago < days;
  });

/** Days over which the sets of a muscle are counted. */
export const weekDays = 7;
/** Days of rest after which a muscle is ready again for hard sets. */
const restDays = 2;

/**
 * What the trainee's sessions before say of this one: muscles over the weekly band, and muscles that had hard sets less than
 * two days ago; one finding each, and none that costs points. `earlier` may hold sessions of any age.
 */
export function weekFindings(
  review: Review,
  earlier: readonly TrainedSession[],
  catalogue: Catalogue,
): ProgrammeFinding[] {
  const { date } = review.session;
  const week = within(earlier, { date, days: weekDays });
  const recent = within(week, { date, days: restDays });
  return [
    ...(week.length > 0 && review.trainee.goal === 'growth' ? weeklyVolume([...week, review], catalogue) : []),
    ...spacing(recent, review, catalogue),
  ];
}

/** Sets of a muscle from which the weekly band is left. */
function weeklyVolume(week: readonly TrainedSession[], catalogue: Catalogue): ProgrammeFinding[] {
  const high = fractionalSets(week, catalogue).filter(({ sets }) => weeklyBand(sets) === 'high');
  const [most] = high;
  if (most === undefined) return [];
  return [
    {
      id: 'weekly-volume-high',
      kind: 'weekly-volume',
      severity: 'prefer',
      restsOn: 'week',
      entryIds: [],
      message: { id: 'weeklyVolume', values: { muscles: high.map(({ muscle }) => muscle), sets: most.sets } },
      advice: { kind: 'rest' },
    },
  ];
}

/** Muscles that do the work in hard sets of both days. */
function spacing(recent: readonly TrainedSession[], review: Review, catalogue: Catalogue): ProgrammeFinding[] {
  const hardOn = (sessions: readonly TrainedSession[]): string[] => [
    ...new Set(
      sessions
        .flatMap(({ entries }) => entries)
        .flatMap((entry) => {
          const exercise = findExercise(catalogue, entry.exercise);
          const hard = exercise !== undefined && hardSetsDone(entry, exercise) > 0;
          return hard ? exercise.muscles.direct : [];
        }),
    ),
  ];
  const before = new Set(hardOn(recent));
  const again = hardOn([review]).filter((muscle) => before.has(muscle));
  if (again.length === 0) return [];
  return [
    {
      id: 'spacing',
      kind: 'spacing',
      severity: 'prefer',
      restsOn: 'week',
      entryIds: [],
      message: { id: 'spacing', values: { muscles: again } },
      advice: { kind: 'rest' },
    },
  ];
}

/** Hard sets of an entry: of the planned ones where they are known, no more than were done. */
function hardSetsDone({ plan, setsDone, clips }: TrainedEntry, exercise: Parameters<typeof hardSets>[1]): number {
  if (plan === undefined) return setsDone ?? Math.max(1, clips.length);
  const hard = hardSets(plan.sets, exercise).length;
  return Math.min(hard, setsDone ?? hard);
}

/** Repetitions × load over all sets, in kilograms; null where the load of a set is not stated. */
export function volumeLoadKg({ sets }: { readonly sets: readonly PlannedSet[] }): number | null {
  const volumes = sets.flatMap(({ reps, loadKg }) => (loadKg === undefined ? [] : [reps * loadKg]));
  return volumes.length < sets.length ? null : volumes.reduce((sum, one) => sum + one, 0);
}

export type MuscleSets = { readonly muscle: string; readonly sets: number };

/** Hard sets per muscle: a direct set counts 1, an indirect one a half; most sets first, then by name. */
export function fractionalSets(sessions: readonly TrainedSession[], catalogue: Catalogue): MuscleSets[] {
  const sets = new Map<string, number>();
  const add = (muscle: string, amount: number): void => {
    sets.set(muscle, (sets.get(muscle) ?? 0) + amount);
  };
  for (const entry of sessions.flatMap(({ entries }) => entries)) {
    const exercise = findExercise(catalogue, entry.exercise);
    if (exercise === undefined) continue;
    const hard = hardSetsDone(entry, exercise);
    for (const muscle of exercise.muscles.direct) add(muscle, hard);
    for (const muscle of exercise.muscles.indirect) add(muscle, hard * indirectShare);
  }
  return [...sets]
    .filter(([, amount]) => amount > 0)
    .map(([muscle, amount]) => ({ muscle, sets: amount }))
    .sort((a, b) => b.sets - a.sets || (a.muscle < b.muscle ? -1 : 1));
}

/** Bands of fractional sets a week (Schoenfeld et al. 2017, J Sports Sci 35:1073, and a 2022 meta-analysis for the upper one). */
export function weeklyBand(sets: number): 'low' | 'moderate' | 'target' | 'high' {
  if (sets < 5) return 'low';
  if (sets < 10) return 'moderate';
  return sets <= 20 ? 'target' : 'high';
}
