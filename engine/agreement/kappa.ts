/** An estimate with its 95 % interval; `low` and `high` null where too little data gives none. */
export type Estimate = { readonly value: number; readonly low: number | null; readonly high: number | null };

export type KappaWeights = 'plain' | 'linear' | 'quadratic';

/** 97.5 % point of the standard normal distribution. */
const normal975 = 1.959963984540054;

/** Square table of counts: `table[i][j]` = items that the first rater put in category i and the second in j. */
export type CountTable = readonly (readonly number[])[];

/**
 * Counts two raters' categories into a square table.
 * @param pairs categories 0 … categories − 1, first rater then second
 */
export function countPairs(pairs: readonly (readonly [number, number])[], categories: number): CountTable {
  const table = Array.from({ length: categories }, () => new Array<number>(categories).fill(0));
  for (const [first, second] of pairs) {
    const row = table[first];
    if (row === undefined || row[second] === undefined) throw new RangeError(`category outside 0-${categories - 1}`);
    row[second] += 1;
  }
  return table;
}

/** Smallest usable standard error: below it, the table shows no spread. */
const noSpread = 1e-6;

function between(value: number, standardError: number): Pick<Estimate, 'low' | 'high'> {
  if (standardError < noSpread) return { low: null, high: null };
  const reach = normal975 * standardError;
  return { low: Math.max(-1, value - reach), high: Math.min(1, value + reach) };
}

type Shares = { readonly n: number; readonly cell: number[][]; readonly row: number[]; readonly column: number[] };

function sharesOf(table: CountTable): Shares {
  const n = table.reduce((sum, row) => sum + row.reduce((a, b) => a + b, 0), 0);
  const cell = table.map((row) => row.map((count) => count / n));
  const row = cell.map((shares) => shares.reduce((a, b) => a + b, 0));
  const column = cell.map((_, j) => cell.reduce((sum, shares) => sum + (shares[j] ?? 0), 0));
  return { n, cell, row, column };
}

/** Share of items both raters put in the same category, 0-1; null without items. */
export function percentAgreement(table: CountTable): number | null {
  const { n, cell } = sharesOf(table);
  return n === 0 ? null : cell.reduce((sum, shares, i) => sum + (shares[i] ?? 0), 0);
}

/**
 * 95 % interval of a share, by Wilson's score, which also holds for few items and for all or none of them
 * (Wilson 1927; recommended by Newcombe 1998, Statistics in Medicine 17:857). Null without items.
 * @param share 0-1
 * @param n how many items it is the share of
 */
export function shareInterval(share: number, n: number): { readonly low: number; readonly high: number } | null {
  if (n === 0) return null;
  const z2 = normal975 ** 2;
  const middle = 2 * n * share + z2;
  const reach = normal975 * Math.sqrt(z2 + 4 * n * share * (1 - share));
  const low = (middle - reach) / (2 * (n + z2));
  const high = (middle + reach) / (2 * (n + z2));
  return { low: Math.max(0, low), high: Math.min(1, high) };
}

function agreementWeight(kind: KappaWeights, i: number, j: number, categories: number): number {
  if (i === j) return 1;
  switch (kind) {
    case 'plain':
      return 0;
    case 'linear':
      return 1 - Math.abs(i - j) / (categories - 1);
    case 'quadratic':
      return 1 - ((i - j) / (categories - 1)) ** 2;
  }
}

/**
 * Cohen's kappa, plain or weighted, with its large-sample 95 % interval (Fleiss, Cohen & Everitt 1969,
 * Psychological Bulletin 72:323). Null without items, or when chance agreement is complete (all in one category); without
 * an interval where the table shows no spread, as when the two agree throughout.
 */
export function cohenKappa(
  table: CountTable,
  kind: KappaWeights = 'plain',
): (Estimate & { readonly standardError: number }) | null {
  const { n, cell, row, column } = sharesOf(table);
  if (n === 0) return null;
  const categories = table.length;
  const weight = cell.map((_, i) => cell.map((__, j) => agreementWeight(kind, i, j, categories)));
  const sumOver = (term: (i: number, j: number) => number) =>
    cell.reduce((sum, shares, i) => sum + shares.reduce((inner, _, j) => inner + term(i, j), 0), 0);
  const at = (matrix: number[][], i: number, j: number) => matrix[i]?.[j] ?? 0;

  const observed = sumOver((i, j) => at(weight, i, j) * at(cell, i, j));
  const expected = sumOver((i, j) => at(weight, i, j) * (row[i] ?? 0) * (column[j] ?? 0));
  if (1 - expected < 1e-12) return null;
  const value = (observed - expected) / (1 - expected);

  const rowMean = weight.map((weights) => weights.reduce((sum, w, j) => sum + w * (column[j] ?? 0), 0));
  const columnMean = column.map((_, j) =>
    weight.reduce((sum, weights, i) => sum + (weights[j] ?? 0) * (row[i] ?? 0), 0),
  );
  const spread = sumOver(
    (i, j) => at(cell, i, j) * (at(weight, i, j) - ((rowMean[i] ?? 0) + (columnMean[j] ?? 0)) * (1 - value)) ** 2,
  );
  const variance = (spread - (value - expected * (1 - value)) ** 2) / (n * (1 - expected) ** 2);
  const standardError = Math.sqrt(Math.max(0, variance));
  return { value, standardError, ...between(value, standardError) };
}

/**
 * Gwet's AC1: agreement beyond chance that stays steady when one category is rare, with its large-sample 95 % interval
 * by linearisation (Gwet 2008, British Journal of Mathematical and Statistical Psychology 61:29). Null without items;
 * without an interval where the table shows no spread.
 */
export function gwetAc1(table: CountTable): (Estimate & { readonly standardError: number }) | null {
  const { n, cell, row, column } = sharesOf(table);
  if (n === 0) return null;
  const observed = cell.reduce((sum, shares, i) => sum + (shares[i] ?? 0), 0);
  const mean = row.map((share, i) => (share + (column[i] ?? 0)) / 2);
  const others = table.length - 1;
  const chance = mean.reduce((sum, share) => sum + share * (1 - share), 0) / others;
  const value = (observed - chance) / (1 - chance);
  // How much the value moves with the share of a cell.
  const slope = (i: number, j: number): number => {
    const chanceSlope = (1 - (mean[i] ?? 0) - (mean[j] ?? 0)) / others;
    return (Number(i === j) - (1 - value) * chanceSlope) / (1 - chance);
  };
  const meanOf = (term: (i: number, j: number) => number): number =>
    cell.reduce((sum, shares, i) => sum + shares.reduce((inner, share, j) => inner + share * term(i, j), 0), 0);
  const variance = (meanOf((i, j) => slope(i, j) ** 2) - meanOf(slope) ** 2) / n;
  const standardError = Math.sqrt(Math.max(0, variance));
  return { value, standardError, ...between(value, standardError) };
}

/** Words for a kappa (Landis & Koch 1977, Biometrics 33:159): a convention, not a verdict. */
export function kappaBand(kappa: number): 'poor' | 'slight' | 'fair' | 'moderate' | 'substantial' | 'almost perfect' {
  if (kappa < 0) return 'poor';
  if (kappa <= 0.2) return 'slight';
  if (kappa <= 0.4) return 'fair';
  if (kappa <= 0.6) return 'moderate';
  if (kappa <= 0.8) return 'substantial';
  return 'almost perfect';
}

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
