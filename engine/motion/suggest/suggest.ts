import type { Exercise, Fault, Goal, View } from '../../exercises/exercise.ts';
import type { SetMeasurement, Suggestion } from '../measurement.ts';
import type { Finding, Miss, SetToJudge } from './finding.ts';
import { eccentricFindings } from './findings/eccentric.ts';
import { evennessFindings } from './findings/evenness.ts';
import { headFindings } from './findings/head.ts';
import { pathFindings } from './findings/path.ts';
import { pauseFindings } from './findings/pauses.ts';
import { rangeFindings } from './findings/range.ts';
import { praise } from './praise.ts';
import { wantedTempo } from './wantedTempo.ts';

export type SuggestFrom = {
  readonly measurement: SetMeasurement;
  readonly exercise: Exercise;
  readonly goal: Goal;
  /** Its tempo, where one is written, is what the phases are held against; else the exercise's target for the goal. */
  readonly plan: { readonly tempo?: string | undefined } | null;
  /** Ids of the criteria that the rubric knows. */
  readonly rubricCriteria: readonly string[];
  /** Null = nobody said where the camera stands: whatever was measured counts. */
  readonly view: View | null;
};

/** The criterion that a fault belongs to among those judged. */
const placeOf = ({ criterion, narrower }: Fault, judged: ReadonlySet<string>): string =>
  narrower !== undefined && judged.has(narrower) ? narrower : criterion;

/** A miss of a measure never says "stop": that takes eyes. A small one, or one without a named fault, is fine tuning. */
function weightOf(fault: Fault | undefined, { small }: Miss): Suggestion['weight'] {
  if (fault === undefined || small) return 'prefer';
  return fault.usualWeight === 'stop' ? 'correct' : fault.usualWeight;
}

/** The miss that shows it most; the earlier of two alike. */
const worstOf = (misses: readonly Miss[]): Miss | null =>
  misses.reduce<Miss | null>((worst, miss) => (worst === null || miss.beyond > worst.beyond ? miss : worst), null);

/**
 * Flags proposed from the measures of a set: each finding once, with all the reps that show it. Nothing is said that the
 * view can't judge, or that lies within a measure's uncertainty of its limit. Then what to keep, two at most.
 */
export function suggest({ measurement, exercise, goal, plan, rubricCriteria, view }: SuggestFrom): Suggestion[] {
  const own = new Set(exercise.criteria.map(({ id }) => id));
  const judged = new Set(rubricCriteria.filter((id) => own.has(id)));
  const isSeen = (criterion: string) =>
    judged.has(criterion) && (view === null || exercise.judgedFrom[view]?.includes(criterion) === true);
  const set: SetToJudge = {
    measurement,
    reps: measurement.reps.toSorted((one, other) => one.index - other.index),
    exercise,
    wanted: wantedTempo(exercise, goal, plan),
  };
  const toSuggestion = ({ name, criterion, faults, misses }: Finding): Suggestion[] => {
    const worst = worstOf(misses);
    if (worst === null) return [];
    const fault = faults.map((id) => exercise.faults.find((one) => one.id === id)).find((found) => found !== undefined);
    const place = fault === undefined ? criterion : placeOf(fault, judged);
    if (!isSeen(place)) return [];
    return [
      {
        id: [place, name, ...(fault === undefined ? [] : [fault.id])].join('.'),
        criterion: place,
        fault: fault?.id ?? null,
        weight: weightOf(fault, worst),
        reps: misses.map(({ rep }) => rep),
        atS: worst.atS,
        measure: worst.measure,
        sentence: worst.sentence,
      },
    ];
  };
  const found = [
    ...rangeFindings(set),
    ...eccentricFindings(set),
    ...evennessFindings(set),
    ...pauseFindings(set),
    ...pathFindings(set),
    ...headFindings(set),
  ].flatMap(toSuggestion);
  const spokenOf = new Set(found.map(({ criterion }) => criterion));
  return [...found, ...praise(set, (criterion) => isSeen(criterion) && !spokenOf.has(criterion))];
}
