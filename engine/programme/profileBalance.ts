import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Speech } from '../language/speech.ts';
import type { PlannedEntry } from './plannedEntry.ts';

/** For growth: a muscle with two exercises or more in the session, none of them hard where it is long. */
export function profileBalanceFindings(
  entries: readonly PlannedEntry[],
  goal: Goal,
  { say }: Speech,
): ProgrammeFinding[] {
  if (goal !== 'growth') return [];
  const muscles = [...new Set(entries.flatMap(({ exercise }) => exercise.muscles.direct))];
  return muscles.flatMap((muscle): ProgrammeFinding[] => {
    const own = entries.filter(({ exercise }) => exercise.muscles.direct.includes(muscle));
    const kinds = new Set(own.map(({ exercise }) => exercise.id));
    if (kinds.size < 2 || own.some(({ exercise }) => exercise.hardestAt !== 'short')) return [];
    return [
      {
        id: `profile-balance-${muscle.replaceAll(' ', '-')}`,
        kind: 'profile-balance',
        weight: 'prefer',
        entryIds: own.map(({ entry }) => entry.id),
        what: say('All {count} exercises for the {muscle} are hardest where it is short.', {
          count: own.length,
          muscle,
        }),
        why: say(
          'A muscle that is never loaded hard at its long end misses the part of the range that has grown muscle at least as well in trials.',
        ),
        suggestion: say('Swap one of them for an exercise that is hard at the long end.'),
        source: say('Wolf et al. 2023, Int J Strength Cond 3(1)'),
      },
    ];
  });
}
