import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from './finding.ts';
import { fewestReps, isUnloaded, type Lift } from './lift.ts';

/** Reps a set that suit a training goal. */
const growth = { from: 5, to: 30 } as const;
const strength = { from: 1, to: 6 } as const;
/** Beside a heavy main lift, other lifts of a strength session may have up to this many reps. */
const besideMainLift = 12;
/** More repetitions in reserve than this, and a set counts as easy. */
const hardUpToInReserve = 4;

/**
 * Plans whose reps don't fit the goal: growth 5-30 and near failure, strength 1-6 on lifts of several joints. Lifts that are
 * done for few reps by design, and holds, are left alone; `hasLadder` names the entries that get a ladder instead.
 */
export function repFindings(lifts: readonly Lift[], goal: Goal, hasLadder: ReadonlySet<string>): ProgrammeFinding[] {
  const main = lifts.some((lift) => lift.exercise.compound && fewestReps(lift.hard) <= strength.to);
  const judged = lifts.filter(({ exercise }) => exercise.beginsWith !== 'hold' && exercise.lowRepByDesign !== true);
  return judged.flatMap((lift) => {
    if (goal === 'growth') return [...forGrowth(lift, hasLadder), ...(isWarmUp(lift, lifts) ? [] : easy(lift))];
    return goal === 'strength' ? forStrength(lift, main) : [];
  });
}

/** More than half of the hard sets. */
function mostOf(lift: Lift, isOutside: (reps: number) => boolean): readonly number[] {
  const outside = lift.hard.map(({ reps }) => reps).filter(isOutside);
  return outside.length * 2 > lift.hard.length ? outside : [];
}

/** The most and the fewest of some numbers of reps. */
const spanOf = (reps: readonly number[]) => {
  const [fewest, most] = [Math.min(...reps), Math.max(...reps)];
  return { fewest, most, isSpan: fewest < most ? 'yes' : 'no' };
};

function forGrowth(lift: Lift, hasLadder: ReadonlySet<string>): ProgrammeFinding[] {
  const few = mostOf(lift, (reps) => reps < growth.from);
  if (few.length > 0) return hasLadder.has(lift.entry.id) ? [] : [outside(lift, 'repsFewForGrowth', few, growth)];
  const many = mostOf(lift, (reps) => reps > growth.to);
  return many.length === 0 ? [] : [outside(lift, 'repsManyForGrowth', many, growth)];
}

function forStrength(lift: Lift, hasMainLift: boolean): ProgrammeFinding[] {
  const most = hasMainLift ? besideMainLift : strength.to;
  const many = lift.exercise.compound ? mostOf(lift, (reps) => reps > most) : [];
  return many.length === 0 ? [] : [outside(lift, 'repsManyForStrength', many, { from: strength.from, to: most })];
}

function outside(
  lift: Lift,
  id: 'repsFewForGrowth' | 'repsManyForGrowth' | 'repsManyForStrength',
  reps: readonly number[],
  range: { readonly from: number; readonly to: number },
): ProgrammeFinding {
  const { entry, exercise } = lift;
  const values = { exercise: exercise.name, ...spanOf(reps), ...range, way: wayOf(lift) };
  return {
    id: `rep-range-${entry.id}`,
    kind: 'rep-range',
    weight: 'adjust',
    restsOn: 'plan',
    entryIds: [entry.id],
    message: { id, values },
    advice: { kind: 'reps', entryId: entry.id, ...range },
  };
}

/** How a lift is made harder or easier: by its load, else by the height of hands and feet, else by its tempo. */
function wayOf(lift: Lift): 'load' | 'handsAndFeet' | 'tempo' {
  if (!isUnloaded(lift)) return 'load';
  return lift.exercise.pattern.endsWith('press') ? 'handsAndFeet' : 'tempo';
}

/** Whether easy sets prepare for hard ones of the same muscles later in the session. */
function isWarmUp(lift: Lift, lifts: readonly Lift[]): boolean {
  const later = lifts.slice(lifts.indexOf(lift) + 1).filter(({ hardCount }) => hardCount > 0);
  return later.some(({ exercise: { muscles } }) =>
    lift.exercise.muscles.direct.some((muscle) => [...muscles.direct, ...muscles.indirect].includes(muscle)),
  );
}

function easy(lift: Lift): ProgrammeFinding[] {
  const { entry, exercise, sets } = lift;
  const stated = sets.flatMap(({ repsInReserve }) => repsInReserve ?? []);
  const hardest = Math.min(...stated);
  if (stated.length < sets.length || sets.length === 0 || hardest <= hardUpToInReserve) return [];
  const enough = hardUpToInReserve - 1;
  return [
    {
      id: `effort-${entry.id}`,
      kind: 'effort',
      weight: 'prefer',
      restsOn: 'plan',
      entryIds: [entry.id],
      message: { id: 'effort', values: { exercise: exercise.name, reps: hardest, enough, way: wayOf(lift) } },
      advice: { kind: 'repsInReserve', entryId: entry.id, to: enough },
    },
  ];
}
