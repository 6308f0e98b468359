import type { Exercise } from '../../exercises/exercise.ts';
import { knownRuns } from '../signal/evenGrid.ts';
import { bestChain, type Kind, workRange } from './chain.ts';
import { type Curve, timeOf } from './curve.ts';
import { type Cycle, cyclesOf } from './cycles.ts';
import { type Move, moveBetween, withoutOverlap } from './moves.ts';
import { firstDirection, type RepMoves } from './phases.ts';
import type { RangeLimits } from './rangeLimits.ts';
import { fromRest } from './restToRest.ts';
import { asSeen } from './seenEnds.ts';
import { explains, type Judgement, judge } from './sureness.ts';
import { turningPoints } from './turningPoints.ts';

/** A movement with how sure it is that it is a rep. */
export type FoundRep = Judgement & { readonly moves: RepMoves };

/** Reps that count, and movements that may be reps; both in order of time. */
export type FoundReps = { readonly counted: readonly FoundRep[]; readonly offered: readonly FoundRep[] };

export type RepSearch = {
  readonly exercise: Pick<Exercise, 'beginsWith' | 'lowerEnd'>;
  readonly limits: RangeLimits;
  /** Share of a stretch's frames in which the load was seen, 0-1; `fromS` and `toS` in the curve's seconds. */
  readonly seenShare: (fromS: number, toS: number) => number;
  /** Whether the hands move as in a gesture in a stretch, and not as in the lift. */
  readonly isGesture: (fromS: number, toS: number) => boolean;
};

/** A rep is at least this sure; something less is offered, and something still less is nothing. */
const surenessOf = { rep: 0.55, offered: 0.08 } as const;
/** A chain that explains less of what the load did than leaves this is told as doubtful. */
const unlikeBelow = 0.75;
/** What is offered covers at least this share of the usual. */
const offeredShare = 0.35;

/**
 * The reps of a height curve, and movements that may be some: first the chain of cycles that explains most of what the load
 * did, then what else there is beside it, each judged by itself. A hold has none.
 */
export function findReps(curve: Curve, { exercise, limits, seenShare, isGesture }: RepSearch): FoundReps {
  const { beginsWith } = exercise;
  if (beginsWith === 'hold') return { counted: [], offered: [] };
  const sense = firstDirection(exercise) === 'up' ? 1 : -1;
  const cycles = cyclesOf(curve, { sense, leastRange: limits.least });
  const kind: Kind = { begins: beginsWith, limits };
  const chain = bestChain(curve, cycles, kind);
  const seen = (from: number, to: number) => seenShare(timeOf(curve, from), timeOf(curve, to));
  const gesture = (from: number, to: number) => isGesture(timeOf(curve, from), timeOf(curve, to));
  const evidence = { curve, kind, chain, seenShare: seen, isGesture: gesture };
  const explained = explains(chain, (from, to) => travelOf(curve, { from, to, least: limits.least }));
  const members = chain.map((cycle) => {
    const judged = judge(cycle, evidence);
    const doubts = explained < unlikeBelow ? [...judged.doubts, 'unlike' as const] : judged.doubts;
    return { cycle, doubts, sureness: judged.sureness * explained };
  });
  const others = besides(cycles, chain, kind)
    .map((cycle) => ({ cycle, ...judge(cycle, evidence) }))
    .filter(({ sureness }) => sureness >= surenessOf.offered)
    .sort((one, other) => other.sureness * workOf(other.cycle, kind) - one.sureness * workOf(one.cycle, kind));
  const found = [...members];
  for (const one of others) if (!found.some(({ cycle }) => overlap(cycle, one.cycle))) found.push(one);
  const reps = toReps(
    curve,
    found.sort((one, other) => one.cycle.from - other.cycle.from),
    beginsWith,
  );
  return {
    counted: reps.filter(({ sureness }) => sureness >= surenessOf.rep),
    offered: reps.filter(({ sureness }) => sureness < surenessOf.rep && sureness >= surenessOf.offered),
  };
}

const workOf = (cycle: Cycle, { begins }: Kind): number => Math.min(workRange(cycle, begins), cycle.outRange);

/** Cycles that lie beside the chain and cover enough to be worth a look. */
function besides(cycles: readonly Cycle[], chain: readonly Cycle[], kind: Kind): Cycle[] {
  const usual = chain.reduce((sum, cycle) => sum + workRange(cycle, kind.begins), 0) / Math.max(1, chain.length);
  return cycles.filter(
    (cycle) =>
      Math.max(cycle.outRange, cycle.backRange) >= offeredShare * usual && !chain.some((one) => overlap(one, cycle)),
  );
}

const overlap = (one: Cycle, other: Cycle): boolean =>
  Math.min(one.to ?? one.lastSeen, other.to ?? other.lastSeen) > Math.max(one.from, other.from);

/** How far the load goes in all between two samples, without what is less than `least`. */
function travelOf(
  curve: Curve,
  { from, to, least }: { readonly from: number; readonly to: number; readonly least: number },
): number {
  return knownRuns(curve.values.slice(from, to + 1)).reduce((sum, { values }) => {
    const turns = turningPoints(values, least);
    return turns.reduce((all, { value }, index) => all + Math.abs(value - (turns[index - 1]?.value ?? value)), sum);
  }, 0);
}

type Ways = Judgement & { readonly first: Move; readonly second: Move | null; readonly lastSeenS: number | null };
type Judged = Judgement & { readonly cycle: Cycle };

/** Cycles as moves from rest to rest; those that meet without a stop are cut where they meet. */
function toReps(curve: Curve, found: readonly Judged[], begins: Kind['begins']): FoundRep[] {
  const pairs = found.flatMap(({ cycle, sureness, doubts }): Ways[] => {
    const { from, far, to, cutAtEnd, lastSeen } = cycle;
    const out = moveBetween(curve, from, far);
    if (!out) return [];
    const back = moveBetween(curve, far, to ?? lastSeen);
    const rested = { first: fromRest(curve, out, 'start'), second: back && fromRest(curve, back, 'end') };
    const { first, second } = asSeen(curve, rested, begins);
    if (begins === 'concentric' && (cutAtEnd || !second)) {
      return [{ first, second: null, lastSeenS: second ? timeOf(curve, lastSeen) : null, sureness, doubts }];
    }
    return second ? [{ first, second, lastSeenS: null, sureness, doubts }] : [];
  });
  const cut = withoutOverlap(pairs.flatMap(({ first, second }) => (second ? [first, second] : [first])));
  let at = 0;
  return pairs.flatMap(({ second, lastSeenS, sureness, doubts }): FoundRep[] => {
    const first = cut[at];
    const next = second ? (cut[at + 1] ?? null) : null;
    at += second ? 2 : 1;
    if (!first) return [];
    if (begins === 'concentric') {
      return [{ moves: { concentric: first, eccentric: next, beginsWith: begins, lastSeenS }, sureness, doubts }];
    }
    return next
      ? [{ moves: { eccentric: first, concentric: next, beginsWith: begins, lastSeenS }, sureness, doubts }]
      : [];
  });
}
