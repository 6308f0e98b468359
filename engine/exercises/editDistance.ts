/**
 * How many letters must be added, left out or changed, or two neighbours swapped, to turn one word into another: 0 for
 * the same word, 1 for "squat" and "squad". Optimal string alignment distance, after Damerau 1964, Communications of
 * the ACM 7, and Wagner and Fischer 1974, Journal of the ACM 21.
 */
export function editDistance(from: string, to: string): number {
  let twoBack: readonly number[] = [];
  let before: readonly number[] = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const line = [row];
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1];
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      line.push(
        Math.min(
          (before[column] ?? Infinity) + 1,
          (line[column - 1] ?? Infinity) + 1,
          (before[column - 1] ?? Infinity) + (same ? 0 : 1),
          swapped ? (twoBack[column - 2] ?? Infinity) + 1 : Infinity,
        ),
      );
    }
    twoBack = before;
    before = line;
  }
  return before[to.length] ?? 0;
}
