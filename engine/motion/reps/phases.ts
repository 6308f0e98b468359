import type { Exercise } from '../../exercises/exercise.ts';
import type { Move } from './moves.ts';

/** A rep by its two moves, in lifting seconds. */
export type RepMoves = {
  /** Null in a rep that begins with the concentric, where the clip ends in the way back or before it. */
  readonly eccentric: Move | null;
  readonly concentric: Move;
  readonly beginsWith: 'eccentric' | 'concentric';
  /** The last that was seen of a rep without its eccentric. */
  readonly lastSeenS: number | null;
};

/** Where the load goes in the eccentric: down, unless it comes down as the muscles shorten (a pulldown). */
export const eccentricDirection = ({ lowerEnd }: Pick<Exercise, 'lowerEnd'>): 'up' | 'down' =>
  lowerEnd === 'shortened' ? 'up' : 'down';

/** Which way the load goes first. */
export function firstDirection(exercise: Pick<Exercise, 'beginsWith' | 'lowerEnd'>): 'up' | 'down' {
  const eccentric = eccentricDirection(exercise);
  if (exercise.beginsWith === 'eccentric') return eccentric;
  return eccentric === 'down' ? 'up' : 'down';
}

/** A rep's moves in the order in which they come. */
export const inOrder = ({ eccentric, concentric, beginsWith }: RepMoves): readonly [Move, Move | null] =>
  beginsWith === 'eccentric' && eccentric ? [eccentric, concentric] : [concentric, eccentric];

/** From the start of a rep's first move to the end of its last, or to the last that was seen of it. */
export function spanOf(moves: RepMoves): { readonly startS: number; readonly endS: number } {
  const [first, second] = inOrder(moves);
  return { startS: first.startS, endS: second?.endS ?? moves.lastSeenS ?? first.endS };
}
