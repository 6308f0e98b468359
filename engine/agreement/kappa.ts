import { shownCoefficient } from '../rubric/shownNumbers.ts';

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

/** How far apart two categories are, in whole steps; the furthest two are `distance(kind, 0, categories - 1)` apart. */
function distance(kind: KappaWeights, i: number, j: number): number {
  switch (kind) {
    case 'plain':
      return Number(i !== j);
    case 'linear':
      return Math.abs(i - j);
    case 'quadratic':
      return (i - j) ** 2;
  }
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/**
 * Cohen's kappa, plain or weighted, with its large-sample 95 % interval (Fleiss, Cohen & Everitt 1969,
 * Psychological Bulletin 72:323). Null without items, or when chance agreement is complete (all in one category); without
 * an interval where the table shows no spread, as when the two agree throughout. The value is one division of whole
 * numbers, so that one of exactly 0 or 0.2 is just that.
 */
export function cohenKappa(
  table: CountTable,
  kind: KappaWeights = 'plain',
): (Estimate & { readonly standardError: number }) | null {
  const { n, cell, row, column } = sharesOf(table);
  if (n === 0) return null;
  const categories = table.length;
  const rowTotals = table.map(sumOf);
  const columnTotals = table.map((_, j) => sumOf(table.map((counts) => counts[j] ?? 0)));
  const apart = table.map((_, i) => table.map((__, j) => distance(kind, i, j)));
  const observedApart =
    n * sumOf(table.map((counts, i) => sumOf(counts.map((count, j) => count * (apart[i]?.[j] ?? 0)))));
  const expectedApart = sumOf(
    rowTotals.map((total, i) => sumOf(columnTotals.map((other, j) => total * other * (apart[i]?.[j] ?? 0)))),
  );
  if (expectedApart === 0) return null;
  const value = (expectedApart - observedApart) / expectedApart;

  const furthest = distance(kind, 0, categories - 1);
  const weight = apart.map((distances) => distances.map((one) => 1 - one / furthest));
  const expected = 1 - expectedApart / furthest / n ** 2;
  const rowMean = weight.map((weights) => weights.reduce((sum, w, j) => sum + w * (column[j] ?? 0), 0));
  const columnMean = column.map((_, j) =>
    weight.reduce((sum, weights, i) => sum + (weights[j] ?? 0) * (row[i] ?? 0), 0),
  );
  const spread = sumOf(
    cell.map((shares, i) =>
      sumOf(
        shares.map(
          (share, j) => share * ((weight[i]?.[j] ?? 0) - ((rowMean[i] ?? 0) + (columnMean[j] ?? 0)) * (1 - value)) ** 2,
        ),
      ),
    ),
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
  const mean = row.map((share, i) => (share + (column[i] ?? 0)) / 2);
  const others = table.length - 1;
  const chance = mean.reduce((sum, share) => sum + share * (1 - share), 0) / others;
  const same = sumOf(table.map((counts, i) => counts[i] ?? 0));
  const totals = table.map((counts, i) => sumOf(counts) + sumOf(table.map((other) => other[i] ?? 0)));
  const byChance = sumOf(totals.map((total) => total * (2 * n - total)));
  // Both sides as whole numbers, so that a value of exactly 0 is just that.
  const value = (4 * n * others * same - byChance) / (4 * n ** 2 * others - byChance);
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

/**
 * Words for a kappa (Landis & Koch 1977, Biometrics 33:159): a convention, not a verdict. The published bands have two
 * decimals (0.00-0.20, 0.21-0.40 …), and so has the kappa that is looked up in them.
 */
export function kappaBand(kappa: number): 'poor' | 'slight' | 'fair' | 'moderate' | 'substantial' | 'almost perfect' {
  const shown = shownCoefficient(kappa, 2);
  if (shown < 0) return 'poor';
  if (shown <= 0.2) return 'slight';
  if (shown <= 0.4) return 'fair';
  if (shown <= 0.6) return 'moderate';
  if (shown <= 0.8) return 'substantial';
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
  const totals = first.map((_, j) => sumOf(counts.map((row) => row[j] ?? 0)));
  const share = totals.map((total) => total / (subjects * raters));
  const pairs = raters * (raters - 1);
  // Both sides of the kappa as whole numbers, so that one of exactly 0 is just that.
  const observedApart =
    subjects * raters * sumOf(counts.map((row) => sumOf(row.map((count) => count * (raters - count)))));
  const expectedApart = (raters - 1) * sumOf(totals.map((total) => total * (subjects * raters - total)));
  if (expectedApart === 0) return null;

  const perCategory = share.map((p, j) => {
    const split = counts.reduce((sum, row) => sum + (row[j] ?? 0) * (raters - (row[j] ?? 0)), 0);
    return p === 0 || p === 1 ? 0 : 1 - split / (subjects * pairs * p * (1 - p));
  });
  const sumPq = share.reduce((sum, p) => sum + p * (1 - p), 0);
  const sumPqSkew = share.reduce((sum, p) => sum + p * (1 - p) * (1 - 2 * p), 0);
  const variance = (2 * (sumPq ** 2 - sumPqSkew)) / (subjects * pairs * sumPq ** 2);
  const value = (expectedApart - observedApart) / expectedApart;
  return { value, z: value / Math.sqrt(variance), perCategory };
}
