import type { Catalogue } from '../exercises/catalogue.ts';
import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Speech } from '../language/speech.ts';
import { parseTempo } from '../time/tempo.ts';
import type { PlannedEntry } from './plannedEntry.ts';

function loadFinding(
  planned: PlannedEntry,
  entries: readonly PlannedEntry[],
  catalogue: Catalogue,
  { say, within }: Speech,
): ProgrammeFinding | null {
  const { entry, exercise } = planned;
  if (exercise.hardestAt !== 'short') return null;
  const variants = exercise.ladder.betterSuited;
  const present = new Set(entries.map((one) => one.exercise.id));
  if (variants.some((variant) => present.has(variant.exercise))) return null;
  const names = variants.flatMap(
    (variant) => catalogue.exercises.find((one) => one.id === variant.exercise)?.name ?? [],
  );
  const [first, ...others] = names;
  if (first === undefined) return null;
  const suggestion =
    others.length === 0
      ? say('Put {first} beside it or in its place.', { first: within(first) })
      : say('Put {first} beside it or in its place. After that, in order: {others}.', {
          first: within(first),
          others: others.map(within).join(', '),
        });
  return {
    id: `short-end-load-${entry.id}`,
    kind: 'short-end-load',
    weight: 'prefer',
    entryIds: [entry.id],
    what: say('{exercise} is hardest where the muscles are shortest, and light where they are long.', {
      exercise: exercise.name,
    }),
    why: say('Work at long muscle lengths has so far grown muscle at least as well, and in some trials better.'),
    suggestion,
    source: say('Wolf et al. 2023, Int J Strength Cond 3(1); Maeo et al. 2021, Med Sci Sports Exerc 53:825'),
  };
}

function pauseFinding({ entry, exercise, plan }: PlannedEntry, goal: Goal, { say }: Speech): ProgrammeFinding | null {
  const tempo = plan?.tempo === undefined ? null : parseTempo(plan.tempo);
  if (tempo === null || tempo.shortPauseS === 0 || tempo.longPauseS > 0 || exercise.hardestAt === 'short') return null;
  if (exercise.targets.tempo[goal].longPauseS[1] === 0) return null;
  return {
    id: `short-end-pause-${entry.id}`,
    kind: 'short-end-pause',
    weight: 'prefer',
    entryIds: [entry.id],
    what: say('{exercise} is planned with a pause at the short end ({end}) and none at the long end.', {
      exercise: exercise.name,
      end: exercise.shortEnd,
    }),
    why: say(
      'The short end of this exercise is where the muscles rest; a pause there makes the set easier, not better.',
    ),
    suggestion: say('Move the pause to the long end ({end}), or drop it.', { end: exercise.longEnd }),
    source: say('common practice'),
  };
}

/** For growth: load that is hardest at the short end with no better-suited exercise beside it, and pauses only there. */
export function shortEndFindings(
  entries: readonly PlannedEntry[],
  goal: Goal,
  catalogue: Catalogue,
  speech: Speech,
): ProgrammeFinding[] {
  if (goal !== 'growth') return [];
  const firstOfEach = entries.filter((one, i) => entries.findIndex((other) => other.exercise === one.exercise) === i);
  return [
    ...firstOfEach.map((planned) => loadFinding(planned, entries, catalogue, speech)),
    ...entries.map((planned) => pauseFinding(planned, goal, speech)),
  ].filter((finding) => finding !== null);
}
