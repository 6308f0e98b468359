import type { Exercise } from '../../exercises/exercise.ts';
import type { Curve } from './curve.ts';
import { type Move, moveBetween, movesOf } from './moves.ts';
import { type MovePair, pairMoves, trimPairs } from './pairMoves.ts';

/** A rep by its two moves, in lifting seconds. */
export type RepMoves = {
  readonly eccentric: Move;
  readonly concentric: Move;
  readonly beginsWith: 'eccentric' | 'concentric';
};

/** Where the load goes in the eccentric: down, unless it comes down as the muscles shorten (a pulldown). */
export const eccentricDirection = ({ lowerEnd }: Pick<Exercise, 'lowerEnd'>): 'up' | 'down' =>
  lowerEnd === 'short' ? 'up' : 'down';

/** Turning points closer together than this share of a whole move don't count. */
const turnShare = 0.35;

/**
 * The reps of a height curve: the load's moves, paired from the phase that the exercise begins with. `leastRange`: what a
 * rep must cover, in the curve's unit. A hold has none.
 */
export function repsOfCurve(
  curve: Curve,
  exercise: Pick<Exercise, 'beginsWith' | 'lowerEnd'>,
  leastRange: number,
): RepMoves[] {
  const { beginsWith } = exercise;
  if (beginsWith === 'hold') return [];
  const ranges = movesOf(curve, leastRange)
    .map(({ range }) => range)
    .sort((one, other) => other - one);
  // The second largest: the largest may be the bar coming from the floor.
  const usual = ranges[1] ?? ranges[0] ?? 0;
  const least = Math.max(leastRange, turnShare * usual);
  const eccentric = eccentricDirection(exercise);
  const concentric = eccentric === 'down' ? 'up' : 'down';
  const moves = movesOf(curve, least);
  const begins = beginsWith === 'eccentric' ? eccentric : concentric;
  return pairMoves(trimPairs(curve, moves, begins), begins)
    .map((pair) => fromRestToRest(curve, pair))
    .map((pair) => byPhase(pair, beginsWith));
}

function byPhase({ first, second }: MovePair, beginsWith: 'eccentric' | 'concentric'): RepMoves {
  return beginsWith === 'eccentric'
    ? { eccentric: first, concentric: second, beginsWith }
    : { eccentric: second, concentric: first, beginsWith };
}

/** What the load does within this share of its range of a rep's outer end, before resting, is not part of the rep. */
const fidgetShare = 0.2;
/** Less than this is sway. */
const swayShare = 0.03;

/**
 * A rep from rest to rest, without what came before the rest ahead of it or after the rest behind it: a bob while walking
 * out, a higher hook on the rack. Only its outer ends are looked at; a stop at its far end stays.
 */
export function fromRestToRest(curve: Curve, { first, second }: MovePair): MovePair {
  const fromIndex = restNear(curve, first, 'start');
  const toIndex = restNear(curve, second, 'end');
  const begun = fromIndex === first.fromIndex ? null : moveBetween(curve, fromIndex, first.toIndex);
  const ended = toIndex === second.toIndex ? null : moveBetween(curve, second.fromIndex, toIndex);
  return {
    first: begun ? { ...begun, endS: first.endS } : first,
    second: ended ? { ...ended, startS: second.startS } : second,
  };
}

/** Where the load rested before it got under way, if it had moved about before; else the move's own end. */
function restNear({ values, speeds }: Curve, move: Move, end: 'start' | 'end'): number {
  const sense = move.direction === 'up' ? 1 : -1;
  const [step, from, limit] = end === 'start' ? [-1, move.toIndex, move.fromIndex] : [1, move.fromIndex, move.toIndex];
  const outer = values[limit] ?? 0;
  const away = (index: number) => Math.abs((values[index] ?? outer) - outer);
  let rest = from;
  while (rest !== limit && away(rest) > fidgetShare * move.range) rest += step;
  while (rest !== limit && (speeds[rest] ?? 0) * sense > 0) rest += step;
  for (let index = rest; index !== limit; index += step) if (away(index) > swayShare * move.range) return rest;
  return limit;
}
