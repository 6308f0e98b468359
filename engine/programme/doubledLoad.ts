import type { ProgrammeFinding } from '../grading/grade.ts';
import { type PlannedEntry, pairsOf, sharedMuscles, wordList } from './plannedEntry.ts';

/** A plan is heavy at this many reps or fewer, ending with this few in reserve (not stated = hard). */
const heavy = { reps: 8, repsInReserve: 3 } as const;

const isHeavy = ({ exercise, plan }: PlannedEntry): boolean =>
  plan !== undefined &&
  exercise.compound &&
  plan.reps <= heavy.reps &&
  (plan.repsInReserve ?? 0) <= heavy.repsInReserve;

const half = (sets: number): string => {
  const halved = Math.ceil(sets / 2);
  return `${halved} ${halved === 1 ? 'set' : 'sets'}`;
};

/** Two heavy compound exercises for the same muscle in one session. */
export function doubledLoadFindings(entries: readonly PlannedEntry[]): ProgrammeFinding[] {
  return pairsOf(entries.filter(isHeavy)).flatMap(([one, other]): ProgrammeFinding[] => {
    const muscles = sharedMuscles(one.exercise, other.exercise);
    if (one.exercise.id === other.exercise.id || muscles.length === 0) return [];
    if (one.plan === undefined || other.plan === undefined || one.plan.sets + other.plan.sets <= 2) return [];
    return [
      {
        id: `doubled-load-${one.entry.id}-${other.entry.id}`,
        kind: 'doubled-load',
        weight: 'prefer',
        entryIds: [one.entry.id, other.entry.id],
        what: `${one.exercise.name} and ${other.exercise.name} are both heavy work for the ${wordList(muscles)}.`,
        why: 'Further sets give less and less, and the second exercise is done tired: its technique suffers first.',
        suggestion: `Halve both: ${half(one.plan.sets)} of ${one.exercise.name}, ${half(other.plan.sets)} of ${other.exercise.name}; or move one to another day.`,
        source: 'halving: common practice; falling returns: Pelland et al. 2025, Sports Med',
      },
    ];
  });
}
