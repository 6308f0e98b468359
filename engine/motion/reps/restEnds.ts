import type { Curve } from './curve.ts';
import { type Move, moveBetween } from './moves.ts';
import type { MovePair } from './pairMoves.ts';

/** What the load does in so much of its way next to where a rep begins or ends, and rests after, is not of the rep. */
const fidgetShare = 0.2;
/** Less than this is sway. */
const swayShare = 0.03;

/**
 * A rep without what the load did before it came to rest ahead of it, and after it came to rest behind it: a bob while
 * walking out, a higher place on the rack. Only its outer ends are looked at; a stop at its far end stays.
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

/** Where the load rested next to where it is under way, if it moved about before that; else the way's own end. */
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
