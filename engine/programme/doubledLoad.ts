import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Speech } from '../language/speech.ts';
import { type PlannedEntry, pairsOf, sharedMuscles } from './plannedEntry.ts';

/** A plan is heavy at this many reps or fewer, ending with this few in reserve (not stated = hard). */
const heavy = { reps: 8, repsInReserve: 3 } as const;

const isHeavy = ({ exercise, plan }: PlannedEntry): boolean =>
  plan !== undefined &&
  exercise.compound &&
  plan.reps <= heavy.reps &&
  (plan.repsInReserve ?? 0) <= heavy.repsInReserve;

/** Two heavy compound exercises for the same muscle in one session. */
export function doubledLoadFindings(entries: readonly PlannedEntry[], { say, list }: Speech): ProgrammeFinding[] {
  const halfOf = (sets: number): string => {
    const half = Math.ceil(sets / 2);
    return say(half === 1 ? '{count} set' : '{count} sets', { count: half });
  };
  return pairsOf(entries.filter(isHeavy)).flatMap(([one, other]): ProgrammeFinding[] => {
    const muscles = sharedMuscles(one.exercise, other.exercise);
    if (one.exercise.id === other.exercise.id || muscles.length === 0) return [];
    if (one.plan === undefined || other.plan === undefined || one.plan.sets + other.plan.sets <= 2) return [];
    const names = { one: one.exercise.name, other: other.exercise.name };
    return [
      {
        id: `doubled-load-${one.entry.id}-${other.entry.id}`,
        kind: 'doubled-load',
        weight: 'prefer',
        entryIds: [one.entry.id, other.entry.id],
        what: say('{one} and {other} are both heavy work for the {muscles}.', { ...names, muscles: list(muscles) }),
        why: say(
          'Further sets give less and less, and the second exercise is done tired: its technique suffers first.',
        ),
        suggestion: say('Halve both: {ones} of {one}, {others} of {other}; or move one to another day.', {
          ...names,
          ones: halfOf(one.plan.sets),
          others: halfOf(other.plan.sets),
        }),
        source: say('halving: common practice; falling returns: Pelland et al. 2025, Sports Med'),
      },
    ];
  });
}
