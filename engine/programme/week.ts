import type { Catalogue } from '../exercises/catalogue.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import { speechOf } from '../language/speech.ts';
import type { Review } from '../review/review.ts';
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
  const { say, list } = speechOf(catalogue);
  return [
    {
      id: 'weekly-volume-high',
      kind: 'weekly-volume',
      weight: 'prefer',
      entryIds: [],
      what: say('More than 20 sets this week went to the {muscles}.', {
        muscles: list(high.map(({ muscle }) => muscle)),
      }),
      why: say(
        'Beyond about 20 sets a week most muscles gained no more in trials, and every set still has to be recovered from.',
      ),
      suggestion: say('Check how recovery goes, and drop the sets that feel like going through the motions.'),
      source: say('Pelland et al. 2025, Sports Med; meta-analysis of 2022 on trained men (12 to 20 sets)'),
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
  const { say, list } = speechOf(catalogue);
  return [
    {
      id: 'spacing',
      kind: 'spacing',
      weight: 'prefer',
      entryIds: [],
      what: say('Hard sets for the {muscles} came less than two days after the last ones.', { muscles: list(again) }),
      why: say(
        'After sets near failure most people need one to two days before the same muscles perform as well again.',
      ),
      suggestion: say('Leave a day between, or keep more in reserve on one of the two days.'),
      source: say('Morán-Navarro et al. 2017, Eur J Appl Physiol 117:2387'),
    },
  ];
}
