import { isAssisted } from '../exercises/bodyWeight.ts';
import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from './finding.ts';
import { fewestReps, idsOf, isPreparation, type Lift, namesOf } from './lift.ts';
import { sharedMuscles, sharePrimeMover } from './primeMovers.ts';

/** Why one lift should come after another. */
type Reason = 'light before heavy' | 'small before big';
type Swap = { readonly earlier: Lift; readonly later: Lift; readonly reason: Reason };

/**
 * Lifts that stand in the way of others: hard sets of many reps before a heavier lift of the same muscles, whatever the
 * goal; for strength also an exercise of one joint before one of several. Said once for lifts that hang together.
 */
export function orderFindings(lifts: readonly Lift[], goal: Goal): ProgrammeFinding[] {
  const swaps = lifts.flatMap((earlier, at) =>
    lifts.slice(at + 1).flatMap((later): Swap[] => {
      const reason = reasonFor(earlier, later, goal);
      return reason === null ? [] : [{ earlier, later, reason }];
    }),
  );
  const best = inBestOrder(lifts, goal);
  return together(swaps).map((group) => findingOf(group, { lifts, best, goal }));
}

/** More reps than the later lift's by this many, and the earlier one is the lighter work. */
const lighterBy = { strength: 3, sharedPrimeMover: 5, otherwise: 8 } as const;

/** A set of more repetitions than this is not heavy work that asks for fresh muscles (common practice, no source). */
const heavyUpTo = 10;

function reasonFor(earlier: Lift, later: Lift, goal: Goal): Reason | null {
  if (earlier.exercise === later.exercise || !isComparable(earlier) || !isComparable(later)) return null;
  if (sharedMuscles(earlier.exercise, later.exercise).length === 0 || warmsUp(earlier)) return null;
  const small = !earlier.exercise.compound && later.exercise.compound;
  if (goal === 'strength' && small) return 'small before big';
  if (earlier.exercise.compound && !later.exercise.compound) return null;
  if (fewestReps(later.hard) > heavyUpTo) return null;
  const more = fewestReps(earlier.hard) - fewestReps(later.hard);
  return more >= leastDifference(earlier, later, goal) ? 'light before heavy' : null;
}

function leastDifference({ exercise: one }: Lift, { exercise: other }: Lift, goal: Goal): number {
  if (goal === 'strength' && one.compound && other.compound) return lighterBy.strength;
  return sharePrimeMover(one, other) ? lighterBy.sharedPrimeMover : lighterBy.otherwise;
}

/** A way to warm up whose sets are not stated to be hard. */
const warmsUp = (lift: Lift): boolean =>
  isPreparation(lift) && lift.hard.every(({ repsInReserve }) => repsInReserve === undefined);

/** Holds have no reps, and lifts that are done for few reps by design are not heavy for it. */
const isComparable = ({ exercise, hard }: Lift): boolean =>
  hard.length > 0 && exercise.beginsWith !== 'hold' && exercise.lowRepByDesign !== true;

/** Swaps with a lift in common, and all those that hang on them. */
function together(swaps: readonly Swap[]): Swap[][] {
  return swaps.reduce<Swap[][]>((groups, swap) => {
    const touches = (group: readonly Swap[]): boolean =>
      group.some((one) => [one.earlier, one.later].some((lift) => lift === swap.earlier || lift === swap.later));
    return [...groups.filter((group) => !touches(group)), [...groups.filter(touches).flat(), swap]];
  }, []);
}

type Session = { readonly lifts: readonly Lift[]; readonly best: readonly Lift[]; readonly goal: Goal };

function findingOf(swaps: readonly Swap[], { lifts, best, goal }: Session): ProgrammeFinding {
  const inOrder = (which: 'earlier' | 'later'): Lift[] =>
    lifts.filter((lift) => swaps.some((swap) => swap[which] === lift));
  const [earlier, later] = [inOrder('earlier'), inOrder('later')];
  const light = swaps.some(({ reason }) => reason === 'light before heavy');
  const muscles = [...new Set(swaps.flatMap((swap) => sharedMuscles(swap.earlier.exercise, swap.later.exercise)))];
  const far = swaps.some((swap) => fewestReps(swap.earlier.hard) - fewestReps(swap.later.hard) >= lighterBy.otherwise);
  const entryIds = idsOf(lifts.filter((lift) => earlier.includes(lift) || later.includes(lift)));
  return {
    id: `order-${entryIds.join('-')}`,
    kind: light ? 'load-order' : 'order',
    severity: goal === 'strength' && (!light || far) ? 'adjust' : 'prefer',
    restsOn: 'plan',
    entryIds,
    message: {
      id: light ? 'loadOrder' : 'order',
      values: {
        earlier: namesOf(earlier),
        earlierCount: namesOf(earlier).length,
        later: namesOf(later),
        muscles,
        more: Math.max(...earlier.map(({ hard }) => fewestReps(hard))),
        fewer: Math.min(...later.map(({ hard }) => fewestReps(hard))),
      },
    },
    advice: { kind: 'order', entryIds: idsOf(best) },
  };
}

/** The lifts in an order in which none stands in the way of another, otherwise as they were. */
function inBestOrder(lifts: readonly Lift[], goal: Goal): Lift[] {
  const left = [...lifts];
  const sorted: Lift[] = [];
  while (left.length > 0) {
    const free = left.findIndex((lift) => left.every((other) => reasonFor(lift, other, goal) === null));
    sorted.push(...left.splice(Math.max(0, free), 1));
  }
  return sorted;
}

/** A set is heavier than another when its load is higher by more than this. */
const heavierBy = 1.05;

/** Hard sets of many reps before heavier ones of fewer, within one lift; and for strength, filmed sets that climb. */
export function setOrderFindings(lifts: readonly Lift[], goal: Goal): ProgrammeFinding[] {
  // Where a machine helps, its load is the help.
  const climbing = lifts
    .filter(({ exercise }) => !isAssisted(exercise))
    .filter((lift) => climbs(lift) || (goal === 'strength' && climbsOnFilm(lift)));
  if (climbing.length === 0) return [];
  const entryIds = idsOf(climbing);
  return [
    {
      ...{ id: `set-order-${entryIds.join('-')}`, kind: 'set-order', severity: 'prefer', restsOn: 'plan', entryIds },
      message: { id: 'setOrder', values: { exercises: namesOf(climbing) } },
      advice: { kind: 'heaviestFirst', entryIds },
    },
  ];
}

/** Reps that a hard set may have more than a heavier one after it. */
const mayHaveMore = 2;

const climbs = ({ hard }: Lift): boolean =>
  hard.some((set, at) =>
    hard
      .slice(at + 1)
      .some(
        (later) =>
          set.loadKg !== undefined &&
          later.loadKg !== undefined &&
          later.loadKg > set.loadKg * heavierBy &&
          set.reps > later.reps + mayHaveMore,
      ),
  );

/** The filmed sets climb although every planned set is stated to be hard. */
function climbsOnFilm({ entry, sets }: Lift): boolean {
  const loads = entry.clips.flatMap(({ loadKg }) => loadKg ?? []);
  const [first, last] = [loads[0], loads.at(-1)];
  if (loads.length < 2 || first === undefined || last === undefined || last <= first * heavierBy) return false;
  return sets.length > 0 && sets.every(({ repsInReserve }) => repsInReserve !== undefined && repsInReserve <= 3);
}
