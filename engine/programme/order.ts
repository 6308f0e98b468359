import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import { type PlannedEntry, pairsOf, sharedMuscles, wordList } from './plannedEntry.ts';

/** For strength: an isolation exercise that comes before a compound one for the same muscle. */
export function orderFindings(entries: readonly PlannedEntry[], goal: Goal): ProgrammeFinding[] {
  if (goal !== 'strength') return [];
  return pairsOf(entries).flatMap(([earlier, later]): ProgrammeFinding[] => {
    const muscles = sharedMuscles(earlier.exercise, later.exercise);
    if (earlier.exercise.compound || !later.exercise.compound || muscles.length === 0) return [];
    return [
      {
        id: `order-${earlier.entry.id}-${later.entry.id}`,
        kind: 'order',
        weight: 'adjust',
        entryIds: [earlier.entry.id, later.entry.id],
        what: `${earlier.exercise.name} comes before ${later.exercise.name}, and both train the ${wordList(muscles)}.`,
        why: 'What is trained first gains most in strength; the bigger lift then starts with tired muscles.',
        suggestion: `Do ${later.exercise.name} first, unless ${earlier.exercise.name} is what matters most.`,
        source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; Simão et al. 2010, J Sports Sci Med 9:1',
      },
    ];
  });
}
