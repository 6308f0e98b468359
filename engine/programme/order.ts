import type { Goal } from '../exercises/exercise.ts';
import { type PlannedEntry, type ProgrammeFinding, pairsOf, sharedMuscles } from './finding.ts';

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
        message: { id: 'order', values: { earlier: earlier.exercise.name, later: later.exercise.name, muscles } },
      },
    ];
  });
}

/** For strength: light work for a muscle before heavy work for it, and sets whose load climbs after the first. */
export const loadOrderFindings = (entries: readonly PlannedEntry[], goal: Goal): ProgrammeFinding[] =>
  goal === 'strength' ? [...pairsOf(entries).flatMap(lightFirst), ...entries.flatMap(climbing)] : [];

function lightFirst([earlier, later]: readonly [PlannedEntry, PlannedEntry]): ProgrammeFinding[] {
  const muscles = sharedMuscles(earlier.exercise, later.exercise);
  if (!earlier.exercise.compound || !later.exercise.compound || muscles.length === 0) return [];
  if (earlier.plan === undefined || later.plan === undefined || earlier.plan.reps <= later.plan.reps + 2) return [];
  const names = { earlier: earlier.exercise.name, later: later.exercise.name };
  return [
    {
      id: `load-order-${earlier.entry.id}-${later.entry.id}`,
      kind: 'load-order',
      weight: 'prefer',
      entryIds: [earlier.entry.id, later.entry.id],
      message: { id: 'loadOrder', values: { ...names, more: earlier.plan.reps, fewer: later.plan.reps, muscles } },
    },
  ];
}

/** A load climbs when the last filmed set is heavier than the first by more than this. */
const climb = 1.05;

function climbing({ entry, exercise }: PlannedEntry): ProgrammeFinding[] {
  const loads = entry.clips.flatMap(({ loadKg }) => loadKg ?? []);
  const [first, last] = [loads[0], loads.at(-1)];
  if (loads.length < 2 || first === undefined || last === undefined || last <= first * climb) return [];
  return [
    {
      id: `set-order-${entry.id}`,
      kind: 'set-order',
      weight: 'prefer',
      entryIds: [entry.id],
      message: { id: 'setOrder', values: { exercise: exercise.name } },
    },
  ];
}

/** A plan is heavy at this many reps or fewer, ending with this few in reserve (not stated = hard). */
const heavy = { reps: 8, repsInReserve: 3 } as const;

const isHeavy = ({ exercise, plan }: PlannedEntry): boolean =>
  plan !== undefined &&
  exercise.compound &&
  plan.reps <= heavy.reps &&
  (plan.repsInReserve ?? 0) <= heavy.repsInReserve;

const halfOf = (sets: number): number => Math.ceil(sets / 2);

/** Two heavy compound exercises for the same muscle in one session. */
export function doubledLoadFindings(entries: readonly PlannedEntry[]): ProgrammeFinding[] {
  return pairsOf(entries.filter(isHeavy)).flatMap(([one, other]): ProgrammeFinding[] => {
    const muscles = sharedMuscles(one.exercise, other.exercise);
    if (one.exercise.id === other.exercise.id || muscles.length === 0) return [];
    if (one.plan === undefined || other.plan === undefined || one.plan.sets + other.plan.sets <= 2) return [];
    return [
      {
        id: `doubled-load-${one.entry.id}-${other.entry.id}`,
        kind: 'doubled-load',
        weight: 'prefer',
        entryIds: [one.entry.id, other.entry.id],
        message: {
          id: 'doubledLoad',
          values: {
            one: one.exercise.name,
            other: other.exercise.name,
            muscles,
            ones: halfOf(one.plan.sets),
            others: halfOf(other.plan.sets),
          },
        },
      },
    ];
  });
}
