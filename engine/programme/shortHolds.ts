import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Speech } from '../language/speech.ts';
import { parseTempo } from '../time/tempo.ts';
import type { PlannedEntry } from './plannedEntry.ts';

/** A pause of this long or longer at one end is a hold, not a turn. */
const holdS = 2;

type Pauses = { readonly longS: number; readonly shortS: number };

function pausesOf({ plan }: PlannedEntry): Pauses | null {
  const tempo = plan?.tempo === undefined ? null : parseTempo(plan.tempo);
  return tempo === null ? null : { longS: tempo.longPauseS, shortS: tempo.shortPauseS };
}

/**
 * For growth: a muscle with two planned exercises or more whose only holds, over all of them, are at the short end. One
 * exercise alone is the business of its own tempo.
 */
export function shortHoldFindings(
  entries: readonly PlannedEntry[],
  goal: Goal,
  { say, list }: Speech,
): ProgrammeFinding[] {
  if (goal !== 'growth') return [];
  const muscles = [...new Set(entries.flatMap(({ exercise }) => exercise.muscles.direct))];
  return muscles.flatMap((muscle): ProgrammeFinding[] => {
    const own = entries.flatMap((planned) => {
      const pauses = pausesOf(planned);
      return pauses !== null && planned.exercise.muscles.direct.includes(muscle) ? [{ planned, pauses }] : [];
    });
    const held = own.filter(({ pauses }) => pauses.shortS >= holdS);
    if (held.length < 2 || own.some(({ pauses }) => pauses.longS > 0)) return [];
    return [
      {
        id: `short-holds-${muscle.replaceAll(' ', '-')}`,
        kind: 'short-holds',
        weight: 'prefer',
        entryIds: held.map(({ planned }) => planned.entry.id),
        what: say('Every hold for the {muscle} is at the short end: {exercises}.', {
          muscle,
          exercises: list(held.map(({ planned }) => planned.exercise.name)),
        }),
        why: say('Strength from holds stays near the angle held, and holds at long muscle lengths carry over further.'),
        suggestion: say('Move one of the holds to the long end.'),
        source: say('Oranchuk et al. 2019, Scand J Med Sci Sports 29:484'),
      },
    ];
  });
}
