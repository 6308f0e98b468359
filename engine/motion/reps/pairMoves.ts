import { type Curve, indexAt } from './curve.ts';
import { type Move, moveBetween } from './moves.ts';

/** Two moves that make a rep, in order. */
export type MovePair = { readonly first: Move; readonly second: Move };

/** A rep covers at least this share of the usual range … */
const leastShareOfUsual = 0.5;
/** … and comes back to within this share of where it began: an un-rack or a walk-out doesn't. */
const largestMismatch = 0.35;

/**
 * Pairs the load's moves into reps that begin in the given direction. Moves much shorter than the rest (walking out,
 * putting the bar back) and moves without a counterpart are left out.
 */
export function pairMoves(moves: readonly Move[], beginsWith: 'up' | 'down'): MovePair[] {
  const pairs: MovePair[] = [];
  for (let index = 0; index + 1 < moves.length; index += 1) {
    const first = moves[index];
    const second = moves[index + 1];
    if (!first || !second || first.direction !== beginsWith || second.direction === beginsWith) continue;
    // Moves with a gap in the footage between them belong to two reps.
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

/** Moves that differ by more than this factor do not both belong to the rep. */
const differs = 1.3;

/**
 * Cuts off what is not part of a rep: lifting the bar from the floor straight into the first rep, and lowering it to the
 * floor after the last. When one of a rep's two moves is far longer than the other, and than usual, it is cut at the level
 * at which the other ends.
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

/** The move from where it last passes a level. */
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

/** The move up to where it first passes a level. */
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
