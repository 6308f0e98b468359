import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { type Equipment, isAtHand } from '../exercises/equipment.ts';
import type { Exercise, Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from './finding.ts';
import { idsOf, type Lift, namesOf } from './lift.ts';

type RangeCut = NonNullable<Exercise['rangeCut']>;

/**
 * Lifts whose set-up ends the range before the stretched end: a floor, a head that meets it, supports that are too low. What
 * gives the range back is said where there is a way, else the exercise that goes further, where it is at hand and not in the
 * session already. A cut that the set-up need not make is found by the faults that show it.
 */
export function rangeCutFindings(
  lifts: readonly Lift[],
  catalogue: Catalogue,
  { goal, equipment }: { readonly goal: Goal; readonly equipment: Equipment | null },
): ProgrammeFinding[] {
  const present = new Set(lifts.map(({ exercise }) => exercise.id));
  const first = lifts.filter((lift, at) => lifts.findIndex(({ exercise }) => exercise === lift.exercise) === at);
  const found = first.flatMap((lift): Found[] => {
    const { exercise } = lift;
    const cut = exercise.rangeCut;
    if (cut === undefined || !matters(cut, goal) || !isShown(cut, lifts, exercise)) return [];
    const fuller = fullerThan(exercise, cut, catalogue);
    if (fuller.some(({ id }) => present.has(id))) return [];
    const better = fuller.find((one) => isAtHand(one, equipment)) ?? null;
    return better === null && cut.remedy === undefined ? [] : [{ lift, cut, better }];
  });
  const alike = Map.groupBy(found, ({ cut, better }) => JSON.stringify([cut.by, cut.remedy, better?.id]));
  return [...alike.values()].flatMap(findingOf);
}

/** A lift whose range is cut, and the exercise at hand that goes further. */
type Found = { readonly lift: Lift; readonly cut: RangeCut; readonly better: Exercise | null };

/** Exercises that go further: the one that the cut names, then those that suit better and are not cut themselves. */
function fullerThan({ ladder }: Exercise, { fuller }: RangeCut, catalogue: Catalogue): Exercise[] {
  if (fuller === undefined) return [];
  const ids = new Set([fuller, ...ladder.betterSuited.map(({ exercise }) => exercise)]);
  return [...ids].flatMap((id) => findExercise(catalogue, id) ?? []).filter(({ rangeCut }) => rangeCut === undefined);
}

/** A set-up that can't be helped is a tool of its own for strength; the skill is judged by its own rules. */
const matters = ({ remedy }: RangeCut, goal: Goal): boolean =>
  goal === 'growth' || (goal === 'strength' && remedy !== undefined);

const isShown = ({ shownBy }: RangeCut, lifts: readonly Lift[], exercise: Exercise): boolean =>
  shownBy === undefined ||
  lifts.some(
    (lift) =>
      lift.exercise === exercise &&
      lift.entry.flags.some(({ fault, severity }) => fault !== null && severity !== 'keep' && shownBy.includes(fault)),
  );

/** One finding for lifts that are cut by the same thing and helped in the same way. */
function findingOf(found: readonly Found[]): ProgrammeFinding[] {
  const [first] = found;
  if (first === undefined) return [];
  const { lift, cut, better } = first;
  const lifts = found.map((one) => one.lift);
  const values = {
    exercises: namesOf(lifts),
    by: cut.by,
    better: better?.name ?? '',
    others: better === null ? 0 : 1,
  };
  return [
    {
      id: `curtailed-range-${idsOf(lifts).join('-')}`,
      kind: 'curtailed-range',
      severity: 'prefer',
      restsOn: cut.shownBy === undefined ? 'plan' : 'film',
      entryIds: idsOf(lifts),
      message:
        cut.remedy === undefined
          ? { id: 'curtailedRange', values }
          : { id: 'curtailedSetUp', values: { ...values, remedy: cut.remedy } },
      advice: better === null ? { kind: 'setUp' } : { kind: 'exercise', entryId: lift.entry.id, to: [better.id] },
    },
  ];
}
