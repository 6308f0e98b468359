/** Fleiss' kappa with its test statistic and the value of each category. */
export type FleissKappa = {
  readonly value: number;
  /** Value over its standard error under no agreement beyond chance. */
  readonly z: number;
  readonly perCategory: readonly number[];
};

/**
 * Agreement of the same number of raters on each subject, in categories without order
 * (Fleiss 1971, Psychological Bulletin 76:378; variance of Fleiss, Nee & Landis 1979).
 * @param counts `counts[i][j]` = raters who put subject i in category j; equal row sums, two raters or more
 * @returns null without subjects, or when every rating is the same
 * @throws RangeError when rows have unequal sums or fewer than two raters
 */
export function fleissKappa(counts: readonly (readonly number[])[]): FleissKappa | null {
  const first = counts[0];
  if (first === undefined) return null;
  const raters = first.reduce((a, b) => a + b, 0);
  if (raters < 2 || counts.some((row) => row.reduce((a, b) => a + b, 0) !== raters)) {
    throw new RangeError('every subject needs the same number of raters, two or more');
  }
  const subjects = counts.length;
  const share = first.map((_, j) => counts.reduce((sum, row) => sum + (row[j] ?? 0), 0) / (subjects * raters));
  const pairs = raters * (raters - 1);
  const observed =
    counts.reduce((sum, row) => sum + row.reduce((inner, count) => inner + count * (count - 1), 0) / pairs, 0) /
    subjects;
  const expected = share.reduce((sum, p) => sum + p * p, 0);
  if (1 - expected < 1e-12) return null;

  const perCategory = share.map((p, j) => {
    const split = counts.reduce((sum, row) => sum + (row[j] ?? 0) * (raters - (row[j] ?? 0)), 0);
    return p === 0 || p === 1 ? 0 : 1 - split / (subjects * pairs * p * (1 - p));
  });
  const sumPq = share.reduce((sum, p) => sum + p * (1 - p), 0);
  const sumPqSkew = share.reduce((sum, p) => sum + p * (1 - p) * (1 - 2 * p), 0);
  const variance = (2 * (sumPq ** 2 - sumPqSkew)) / (subjects * pairs * sumPq ** 2);
  const value = (observed - expected) / (1 - expected);
  return { value, z: value / Math.sqrt(variance), perCategory };
}
