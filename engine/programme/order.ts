import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Speech } from '../language/speech.ts';
import { type PlannedEntry, pairsOf, sharedMuscles } from './plannedEntry.ts';

/** For strength: an isolation exercise that comes before a compound one for the same muscle. */
export function orderFindings(entries: readonly PlannedEntry[], goal: Goal, { say, list }: Speech): ProgrammeFinding[] {
  if (goal !== 'strength') return [];
  return pairsOf(entries).flatMap(([earlier, later]): ProgrammeFinding[] => {
    const muscles = sharedMuscles(earlier.exercise, later.exercise);
    if (earlier.exercise.compound || !later.exercise.compound || muscles.length === 0) return [];
    const names = { earlier: earlier.exercise.name, later: later.exercise.name };
    return [
      {
        id: `order-${earlier.entry.id}-${later.entry.id}`,
        kind: 'order',
        weight: 'adjust',
        entryIds: [earlier.entry.id, later.entry.id],
        what: say('{earlier} comes before {later}, and both train the {muscles}.', {
          ...names,
          muscles: list(muscles),
        }),
        why: say('What is trained first gains most in strength; the bigger lift then starts with tired muscles.'),
        suggestion: say('Do {later} first, unless {earlier} is what matters most.', names),
        source: say('Nunes et al. 2021, Eur J Sport Sci 21:149; Simão et al. 2010, J Sports Sci Med 9:1'),
      },
    ];
  });
}
