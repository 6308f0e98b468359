import { type Curve, indexAt } from './curve.ts';
import { type Move, moveBetween } from './moves.ts';

/** Ways that differ more than this are not both of the rep. */
const differs = 1.3;

/**
 * Cuts off what isn't of a rep: the bar's way from the floor that runs on into the first rep, and its way back to the
 * floor after the last. Of two ways that make a rep the far longer one, if it is far longer than usual too, is cut where it
 * passes the level at which the other ends.
 */
export function trimPairs(curve: Curve, moves: readonly Move[], begins: 'up' | 'down'): Move[] {
  const trimmed = [...moves];
  const ranges = moves.map(({ range }) => range).sort((one, other) => one - other);
  const usual = ranges[(ranges.length - 1) >> 1] ?? 0;
  for (let index = 0; index + 1 < trimmed.length; index += 1) {
    const first = trimmed[index];
    const second = trimmed[index + 1];
    if (!first || !second || first.direction !== begins) continue;
    if (first.range > differs * Math.max(second.range, usual)) {
      trimmed[index] = cutStart(curve, first, second.toIndex) ?? first;
    } else if (second.range > differs * Math.max(first.range, usual)) {
      trimmed[index + 1] = cutEnd(curve, second, first.fromIndex) ?? second;
    }
    index += 1;
  }
  return trimmed;
}

/** From where the way last passes a level on. */
function cutStart(curve: Curve, move: Move, levelIndex: number): Move | null {
  const level = curve.values[levelIndex];
  if (level === null || level === undefined) return null;
  const sense = move.direction === 'up' ? 1 : -1;
  let from = indexAt(curve, move.peakAtS);
  for (let index = move.toIndex; index > move.fromIndex; index -= 1) {
    if (((curve.values[index] ?? level) - level) * sense > 0) continue;
    from = index;
    break;
  }
  return moveBetween(curve, from, move.toIndex);
}

/** Up to where the way first passes a level. */
function cutEnd(curve: Curve, move: Move, levelIndex: number): Move | null {
  const level = curve.values[levelIndex];
  if (level === null || level === undefined) return null;
  const sense = move.direction === 'up' ? 1 : -1;
  let to = move.toIndex;
  for (let index = move.fromIndex; index < move.toIndex; index += 1) {
    if (((curve.values[index] ?? level) - level) * sense < 0) continue;
    to = index;
    break;
  }
  return moveBetween(curve, move.fromIndex, to);
}
