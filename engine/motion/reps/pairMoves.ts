import { type Curve, indexAt } from './curve.ts';
import { type Move, moveBetween } from './moves.ts';

/** Two ways that make a rep, in the order in which they come. */
export type MovePair = { readonly first: Move; readonly second: Move };

/** A rep covers at least this share of the usual range … */
const leastShareOfUsual = 0.5;
/** … and comes back to within this share of where it began: an un-rack or a walk-out doesn't. */
const largestMismatch = 0.35;

/**
 * Pairs the ways of the load into reps, of which each begins with a way in the given direction. Ways that are much
 * shorter than the rest (walking out, putting the bar back) and ways without their counterpart are left out.
 */
export function pairMoves(moves: readonly Move[], beginsWith: 'up' | 'down'): MovePair[] {
  const pairs: MovePair[] = [];
  for (let index = 0; index + 1 < moves.length; index += 1) {
    const first = moves[index];
    const second = moves[index + 1];
    if (!first || !second || first.direction !== beginsWith || second.direction === beginsWith) continue;
    // Two ways between which nothing was seen are of two reps.
    if (first.toIndex !== second.fromIndex) continue;
    pairs.push({ first, second });
    index += 1;
  }
  const usual = median(pairs.map(rangeOf));
  return pairs.filter(
    (pair) =>
      rangeOf(pair) >= leastShareOfUsual * usual &&
      Math.abs(pair.first.range - pair.second.range) <= largestMismatch * Math.max(pair.first.range, pair.second.range),
  );
}

const rangeOf = ({ first, second }: MovePair): number => (first.range + second.range) / 2;

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((one, other) => one - other);
  return sorted[sorted.length >> 1] ?? 0;
}

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
