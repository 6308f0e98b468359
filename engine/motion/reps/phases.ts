import type { Exercise } from '../../exercises/exercise.ts';
import type { Curve } from './curve.ts';
import { type Move, movesOf } from './moves.ts';
import { type MovePair, pairMoves } from './pairMoves.ts';
import { fromRestToRest } from './restEnds.ts';
import { trimPairs } from './trimPairs.ts';

/** A rep by its two ways, in lifting seconds. */
export type RepMoves = {
  readonly eccentric: Move;
  readonly concentric: Move;
  readonly beginsWith: 'eccentric' | 'concentric';
};

/** Which way the load goes in the eccentric: down, but for a load that comes down as the muscles shorten (a pulldown). */
export const eccentricDirection = ({ lowerEnd }: Pick<Exercise, 'lowerEnd'>): 'up' | 'down' =>
  lowerEnd === 'short' ? 'up' : 'down';

/** Turning points nearer than this share of a whole way are not turning points. */
const turnShare = 0.35;

/**
 * The reps of a curve of height: ways of the load, paired from the phase that the exercise begins with. `leastRange`: what
 * a rep must cover, in the curve's unit. A hold has none.
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
  // The second largest: the largest may be the bar on its way from the floor.
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
