import type { Curve } from './curve.ts';
import { type Move, moveBetween } from './moves.ts';

/** What the load does within this share of its range of a rep's outer end, before resting, is not part of the rep. */
const fidgetShare = 0.2;
/** Less than this is sway. */
const swayShare = 0.03;

/**
 * A move without what came before the rest ahead of it, or after the rest behind it: a bob while walking out, a higher hook
 * on the rack. Only the given end is looked at.
 */
export function fromRest(curve: Curve, move: Move, end: 'start' | 'end'): Move {
  const index = restNear(curve, move, end);
  if (end === 'start') {
    const begun = index === move.fromIndex ? null : moveBetween(curve, index, move.toIndex);
    return begun ? { ...begun, endS: move.endS } : move;
  }
  const ended = index === move.toIndex ? null : moveBetween(curve, move.fromIndex, index);
  return ended ? { ...ended, startS: move.startS } : move;
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
