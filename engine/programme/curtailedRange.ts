import type { Catalogue } from '../exercises/catalogue.ts';
import type { Goal } from '../exercises/exercise.ts';
import { findExercise } from '../exercises/lookUp.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Speech } from '../language/speech.ts';
import type { PlannedEntry } from './plannedEntry.ts';

/**
 * For growth: exercises whose set-up ends the range before the long end (a floor, a box), where nothing else in the
 * session takes the muscle there. For strength a cut range is a tool of its own, and not remarked on.
 */
export function curtailedRangeFindings(
  entries: readonly PlannedEntry[],
  goal: Goal,
  catalogue: Catalogue,
  { say, within }: Speech,
): ProgrammeFinding[] {
  if (goal !== 'growth') return [];
  const present = new Set(entries.map(({ exercise }) => exercise.id));
  const firstOfEach = entries.filter((one, i) => entries.findIndex((other) => other.exercise === one.exercise) === i);
  return firstOfEach.flatMap(({ entry, exercise }): ProgrammeFinding[] => {
    const { rangeCut } = exercise;
    const fuller = rangeCut === undefined ? undefined : findExercise(catalogue, rangeCut.fuller);
    if (rangeCut === undefined || fuller === undefined || present.has(fuller.id)) return [];
    return [
      {
        id: `curtailed-range-${entry.id}`,
        kind: 'curtailed-range',
        weight: 'prefer',
        entryIds: [entry.id],
        what: say('{exercise}: {by} ends the range before the muscles are at their longest.', {
          exercise: exercise.name,
          by: rangeCut.by,
        }),
        why: say('Work at long muscle lengths has so far grown muscle at least as well, and in some trials better.'),
        suggestion: say('Put {fuller} beside it or in its place, unless the shorter range is there for a reason.', {
          fuller: within(fuller.name),
        }),
        source: say('Wolf et al. 2023, Int J Strength Cond 3(1)'),
      },
    ];
  });
}
