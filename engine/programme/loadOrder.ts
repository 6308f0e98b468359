import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Speech } from '../language/speech.ts';
import { type PlannedEntry, pairsOf, sharedMuscles } from './plannedEntry.ts';

/** Loads of an entry's sets, in the order of its clips, where the film says them. */
const loadsOf = ({ entry }: PlannedEntry): number[] => entry.clips.flatMap(({ loadKg }) => loadKg ?? []);

/** For strength: light work for a muscle before heavy work for it, and sets whose load climbs after the first. */
export function loadOrderFindings(
  entries: readonly PlannedEntry[],
  goal: Goal,
  { say, list }: Speech,
): ProgrammeFinding[] {
  if (goal !== 'strength') return [];
  const acrossExercises = pairsOf(entries).flatMap(([earlier, later]): ProgrammeFinding[] => {
    const muscles = sharedMuscles(earlier.exercise, later.exercise);
    if (!earlier.exercise.compound || !later.exercise.compound || muscles.length === 0) return [];
    if (earlier.plan === undefined || later.plan === undefined || earlier.plan.reps <= later.plan.reps + 2) return [];
    return [
      {
        id: `load-order-${earlier.entry.id}-${later.entry.id}`,
        kind: 'load-order',
        weight: 'prefer',
        entryIds: [earlier.entry.id, later.entry.id],
        what: say(
          '{earlier} for {more} reps comes before the heavier {later} for {fewer}, and both train the {muscles}.',
          {
            earlier: earlier.exercise.name,
            more: earlier.plan.reps,
            later: later.exercise.name,
            fewer: later.plan.reps,
            muscles: list(muscles),
          },
        ),
        why: say('Heavy work asks for fresh muscles and a fresh head; what comes first gains most in strength.'),
        suggestion: say('Do {later} first.', { later: later.exercise.name }),
        source: say('Nunes et al. 2021, Eur J Sport Sci 21:149'),
      },
    ];
  });
  const acrossSets = entries.flatMap((planned): ProgrammeFinding[] => {
    const loads = loadsOf(planned);
    const [first, last] = [loads[0], loads.at(-1)];
    if (loads.length < 2 || first === undefined || last === undefined || last <= first * 1.05) return [];
    return [
      {
        id: `set-order-${planned.entry.id}`,
        kind: 'set-order',
        weight: 'prefer',
        entryIds: [planned.entry.id],
        what: say('The load of {exercise} climbs over its filmed sets, so the heaviest one is done last and tired.', {
          exercise: planned.exercise.name,
        }),
        why: say('For strength the heaviest set teaches most while technique is fresh.'),
        suggestion: say('Warm up to the heaviest set, do it first, then take load off for the others.'),
        source: say('common practice'),
      },
    ];
  });
  return [...acrossExercises, ...acrossSets];
}
