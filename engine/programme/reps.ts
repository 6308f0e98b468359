import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from './finding.ts';
import { fewestReps, idsOf, isPreparation, isUnloaded, type Lift, namesOf } from './lift.ts';

/** Reps a set that suit a training goal. */
const growth = { from: 5, to: 30 } as const;
const strength = { from: 1, to: 6 } as const;
/** Beside a heavy main lift, other lifts of a strength session may have up to this many reps. */
const besideMainLift = 12;
/** More repetitions in reserve than this, and a set counts as easy. */
const hardUpToInReserve = 4;

/** How a lift is made harder or easier: by its load, else by the height of hands and feet, else by its tempo. */
type Way = 'load' | 'handsAndFeet' | 'tempo';

type RangeMessage = 'repsFewForGrowth' | 'repsManyForGrowth' | 'repsManyForStrength';

/** A lift whose reps don't fit, or whose sets are easy. */
type Remark = {
  readonly lift: Lift;
  readonly id: RangeMessage | 'effort';
  /** Reps outside the range, or in reserve. */
  readonly reps: readonly number[];
  readonly way: Way;
};

/**
 * Plans whose reps don't fit the goal: growth 5-30 and near failure, strength 1-6 on lifts of several joints. Lifts that are
 * done for few reps by design, and holds, are left alone; `hasLadder` names the entries that are told of a ladder, or stand on
 * one. What is true of several lifts is said once.
 */
export function repFindings(lifts: readonly Lift[], goal: Goal, hasLadder: ReadonlySet<string>): ProgrammeFinding[] {
  const judged = lifts.filter(({ exercise }) => exercise.beginsWith !== 'hold' && exercise.lowRepByDesign !== true);
  const mostForStrength = lifts.some((lift) => lift.exercise.compound && fewestReps(lift.hard) <= strength.to)
    ? besideMainLift
    : strength.to;
  const remarks = judged.flatMap((lift): Remark[] => {
    if (goal === 'strength') return tooMany(lift, mostForStrength);
    if (goal !== 'growth') return [];
    return [...(hasLadder.has(lift.entry.id) ? [] : forGrowth(lift)), ...(isWarmUp(lift, lifts) ? [] : easy(lift))];
  });
  const alike = Map.groupBy(remarks, ({ id, way }) => `${id} ${way}`);
  return [...alike.values()].flatMap((own) => findingOf(own, mostForStrength));
}

function wayOf(lift: Lift): Way {
  if (!isUnloaded(lift)) return 'load';
  return lift.exercise.pattern.endsWith('press') ? 'handsAndFeet' : 'tempo';
}

/** The remark on a lift where most of its hard sets have such reps. */
function mostOf(lift: Lift, id: RangeMessage, isOutside: (reps: number) => boolean): Remark[] {
  const reps = lift.hard.map((set) => set.reps).filter(isOutside);
  return reps.length * 2 > lift.hard.length ? [{ lift, id, reps, way: wayOf(lift) }] : [];
}

const forGrowth = (lift: Lift): Remark[] => [
  ...mostOf(lift, 'repsFewForGrowth', (reps) => reps < growth.from),
  ...mostOf(lift, 'repsManyForGrowth', (reps) => reps > growth.to),
];

/** A lift without load may have any number of reps beside a heavy main lift. */
function tooMany(lift: Lift, most: number): Remark[] {
  const isFree = !lift.exercise.compound || (most === besideMainLift && isUnloaded(lift));
  return isFree ? [] : mostOf(lift, 'repsManyForStrength', (reps) => reps > most);
}

/**
 * Whether easy sets prepare for hard ones of the same muscles later in the session. A lift that is a way to warm up
 * may be easy anywhere beside hard ones.
 */
function isWarmUp(lift: Lift, lifts: readonly Lift[]): boolean {
  const { exercise } = lift;
  const others = isPreparation(lift) ? lifts.filter((one) => one !== lift) : lifts.slice(lifts.indexOf(lift) + 1);
  const hard = others.filter(({ hardCount }) => hardCount > 0);
  return hard.some(({ exercise: { muscles } }) =>
    exercise.muscles.direct.some((muscle) => [...muscles.direct, ...muscles.indirect].includes(muscle)),
  );
}

/** The remark on a lift whose hardest set keeps many reps in reserve. */
function easy(lift: Lift): Remark[] {
  const stated = lift.sets.flatMap(({ repsInReserve }) => repsInReserve ?? []);
  const hardest = Math.min(...stated);
  if (stated.length < lift.sets.length || lift.sets.length === 0 || hardest <= hardUpToInReserve) return [];
  return [{ lift, id: 'effort', reps: [hardest], way: wayOf(lift) }];
}

/** One finding for lifts of which the same is true. */
function findingOf(remarks: readonly Remark[], mostForStrength: number): ProgrammeFinding[] {
  const [first] = remarks;
  if (first === undefined) return [];
  const { id, way } = first;
  const lifts = remarks.map(({ lift }) => lift);
  const entryIds = idsOf(lifts);
  const reps = remarks.flatMap((one) => one.reps);
  const [fewest, most] = [Math.min(...reps), Math.max(...reps)];
  const isSpan = fewest < most ? 'yes' : 'no';
  const names = { exercises: namesOf(lifts), count: namesOf(lifts).length, fewest, most, isSpan, way };
  if (id === 'effort') {
    const enough = hardUpToInReserve - 1;
    return [
      {
        ...{ id: `effort-${entryIds.join('-')}`, kind: 'effort', severity: 'prefer', restsOn: 'plan', entryIds },
        message: { id, values: { ...names, enough } },
        advice: { kind: 'repsInReserve', entryIds, to: enough },
      },
    ];
  }
  const range = id === 'repsManyForStrength' ? { from: strength.from, to: mostForStrength } : growth;
  return [
    {
      ...{ id: `rep-range-${entryIds.join('-')}`, kind: 'rep-range', severity: 'adjust', restsOn: 'plan', entryIds },
      message: { id, values: { ...names, ...range } },
      advice: { kind: 'reps', entryIds, ...range },
    },
  ];
}
