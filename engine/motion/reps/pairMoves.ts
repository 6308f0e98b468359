import type { Move } from './moves.ts';

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
