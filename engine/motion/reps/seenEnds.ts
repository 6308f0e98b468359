import type { Curve } from './curve.ts';
import { drownsInWander, type Move } from './moves.ts';

/**
 * A body is seen to move once it has covered about a hundredth of its way; until then it sways. The smoothest movement takes
 * a tenth of its time for that, the sharpest a sixteenth (minimum jerk; raised cosine of height): this lies between. In shares
 * of a move's time.
 */
const unseenShare = 0.08;
/** Shorter than this between two moves is no stop. */
const leastStopS = 0.15;

/** A rep's moves; `second` null where the way back was not seen. */
type Ways = { readonly first: Move; readonly second: Move | null };

/**
 * Moves between rests from where they are seen to begin to where they are seen to end, on a curve that wanders. A lift that
 * begins with its eccentric turns where it is furthest; one that begins with the concentric is held there, if it stops.
 */
export function asSeen(curve: Curve, { first, second }: Ways, begins: 'eccentric' | 'concentric'): Ways {
  const stops = begins === 'concentric' && (second === null || second.startS - first.endS > leastStopS);
  return {
    first: within(curve, first, { start: true, end: stops }),
    second: second && within(curve, second, { start: stops, end: true }),
  };
}

function within(curve: Curve, move: Move, rests: { readonly start: boolean; readonly end: boolean }): Move {
  if (!drownsInWander(curve, move.range)) return move;
  const unseenS = unseenShare * (move.endS - move.startS);
  return {
    ...move,
    startS: move.startS + (rests.start ? unseenS : 0),
    endS: move.endS - (rests.end ? unseenS : 0),
  };
}
